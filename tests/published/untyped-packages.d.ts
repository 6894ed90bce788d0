/** Packages of the registry that carry no types: only what the tests call. */
declare module "quadprog" {
  /** Lists count from 1; index 0 is unused. Minimises ½·b'Db − d'b under A'b ≥ b0, the first `meq` as equalities. */
  export function solveQP(
    Dmat: number[][],
    dvec: number[],
    Amat: number[][],
    bvec: number[],
    meq: number,
  ): { solution: number[]; message: string };
}

declare module "psychrolib" {
  const psychrolib: {
    SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(temperature: number): number;
    GetTDewPointFromRelHum(temperature: number, relativeHumidity: number): number;
    GetHumRatioFromTWetBulb(temperature: number, wetBulb: number, pressure: number): number;
    GetVapPresFromHumRatio(humidityRatio: number, pressure: number): number;
    GetStandardAtmPressure(altitude: number): number;
    GetVapPresFromRelHum(temperature: number, relativeHumidity: number): number;
  };
  export = psychrolib;
}
