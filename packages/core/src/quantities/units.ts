/** How a unit is written in a project file, shown in a report, and converted from SI. */
export interface ShownUnit {
  /** As a project file takes it: `W/(m2 K)`. */
  written: string;
  /** As a report shows it: `W/(m²·K)`. */
  shown: string;
  /** The unit the core works in, as mathjs reads it; empty for bare numbers. */
  si: string;
  /** Shown value for one SI unit. */
  perSi: number;
}

const unit = (written: string, shown: string, si: string, perSi: number): ShownUnit => ({ written, shown, si, perSi });

/** No unit: μ, emissivity, factors. */
export const BARE: ShownUnit = unit("", "", "", 1);

/** Units shown, by their written form. Temperatures are °C inside the core too. */
export const UNITS = {
  mm: unit("mm", "mm", "m", 1000),
  m: unit("m", "m", "m", 1),
  m2: unit("m2", "m²", "m^2", 1),
  m3: unit("m3", "m³", "m^3", 1),
  celsius: unit("°C", "°C", "degC", 1),
  kelvin: unit("K", "K", "K", 1),
  kelvinPerKilometre: unit("K/km", "K/km", "K/m", 1000),
  percent: unit("%", "%", "m/m", 100),
  degrees: unit("°", "°", "deg", 1),
  conductivity: unit("W/(m K)", "W/(m·K)", "W/(m K)", 1),
  resistance: unit("m2 K/W", "m²·K/W", "m^2 K/W", 1),
  transmittance: unit("W/(m2 K)", "W/(m²·K)", "W/(m^2 K)", 1),
  density: unit("kg/m3", "kg/m³", "kg/m^3", 1),
  specificHeat: unit("J/(kg K)", "J/(kg·K)", "J/(kg K)", 1),
  vapourResistance: unit("MN s/g", "MN·s/g", "N s/kg", 1e-9),
  perm: unit("perm", "perm", "kg/(m^2 s Pa)", 1 / 5.72e-11),
  permInch: unit("perm in", "perm·in", "kg/(m s Pa)", 1 / (5.72e-11 * 0.0254)),
  transmission: unit("g/(m2 day)", "g/(m²·day)", "kg/(m^2 s)", 86_400_000),
  pascal: unit("Pa", "Pa", "Pa", 1),
  perHour: unit("/h", "1/h", "s^-1", 3600),
  kilogramPerDay: unit("kg/day", "kg/day", "kg/s", 86_400),
  kilogramPerArea: unit("kg/m2", "kg/m²", "kg/m^2", 1),
  gramPerArea: unit("g/m2", "g/m²", "kg/m^2", 1000),
  perArea: unit("/m2", "1/m²", "m^-2", 1),
  openingPerLength: unit("mm2/m", "mm²/m", "m^2/m", 1e6),
  openingPerArea: unit("mm2/m2", "mm²/m²", "m^2/m^2", 1e6),
  millimetrePerDay: unit("mm/day", "mm/day", "m/s", 1000 * 86_400),
  metrePerSecond: unit("m/s", "m/s", "m/s", 1),
  perKilowattHour: unit("/kWh", "/kWh", "kWh^-1", 1),
  kilowattHourPerArea: unit("kWh/m2", "kWh/m²", "kWh/m^2", 1),
};
