/** A build-up made of objects, without any project file: the types tell all there is to give. */
import {
  applySeverity,
  type BuildUp,
  type BuildUpCalculation,
  calculateBuildUp,
  type Layer,
  type Material,
  ONE_IN_TEN_COLDER,
  type OutdoorClimate,
  type Room,
  type Surroundings,
  surroundingsOf,
} from "@warmside/core/calculation";

declare const console: { log(text: string): void };

const climate: OutdoorClimate = {
  name: "invented",
  origin: ["made up for a test"],
  latitude: null,
  longitude: null,
  altitude: null,
  temperature: [1, 2, 5, 8, 12, 15, 17, 17, 14, 10, 5, 2],
  relativeHumidity: [0.88, 0.86, 0.8, 0.74, 0.72, 0.74, 0.75, 0.77, 0.82, 0.86, 0.89, 0.9],
};

const room: Room = {
  name: "indoor",
  temperature: { kind: "heated", setPoint: 20, daysPerWeek: 7, otherwise: null },
  cooling: null,
  humidity: { kind: "class", class: 3 },
  humidityWhenCooled: null,
  burstsOfSteam: false,
  pool: false,
};

function material(name: string, conductivity: number | null, factor: number | null, sd: number | null): Material {
  return {
    name,
    group: null,
    kind: "board",
    density: 500,
    conductivity,
    specificHeat: null,
    vapourResistanceFactorDry: factor,
    vapourResistanceFactorWet: factor,
    equivalentAirLayerThickness: sd,
    equivalentAirLayerThicknessByHumidity: null,
    emissivity: 0.9,
    facingInner: null,
    facingOuter: null,
    source: "made up for a test",
    basis: "assumed",
    spread: null,
  };
}

function layer(made: Material, thickness: number): Layer {
  return {
    type: made.equivalentAirLayerThickness === null ? "material" : "sheet",
    name: made.name,
    material: made,
    thickness,
    framing: null,
    fit: "continuous",
    fasteners: null,
    gaps: null,
    purpose: null,
    bonded: false,
    gapBesideFraming: null,
    taped: null,
    emissivityInner: made.emissivity,
    emissivityOuter: made.emissivity,
    facingInner: 0,
    facingOuter: 0,
  };
}

const wall: BuildUp = {
  name: "Wall",
  slug: "wall",
  element: "wall",
  room: "indoor",
  faces: "outdoors",
  target: null,
  pitch: null,
  span: null,
  clearSky: false,
  layers: [
    layer(material("board", 0.13, 50, null), 0.012),
    layer(material("wool", 0.035, 1, null), 0.14),
    layer(material("sheet", null, null, 50), 0),
    layer(material("cladding", 0.13, 50, null), 0.02),
  ],
  ground: null,
  void: null,
  voidClimate: null,
  space: null,
  roofSpace: null,
  area: null,
  openings: null,
  length: null,
  wettedByRain: null,
  rainOfHeatingSeason: null,
  unheatedSkin: false,
  junctionFactors: [],
  oddEnds: null,
  twoSeasonCheck: false,
  leak: null,
  trappedWater: [],
  variableResistance: false,
  variants: [],
};

const rooms = new Map([[room.name, room]]);
const colder = applySeverity(climate, ONE_IN_TEN_COLDER);
const surroundings: Surroundings = surroundingsOf({ climate: colder, rooms, humidityMargin: 1 });
const figures: BuildUpCalculation = calculateBuildUp(wall, surroundings.sites.reported);
const { verdict, peak }: { verdict: "dry" | "dries out" | "stays wet"; peak: number } = figures.governing.year;
console.log(JSON.stringify({ transmittance: figures.heat.transmittance, verdict, peak }));
