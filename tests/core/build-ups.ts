import { readFileSync } from "node:fs";
import { type BuildUpCalculation, figuresOfBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import { climateMonths } from "../../packages/core/src/climate/climate-months.ts";
import { readClimate } from "../../packages/core/src/climate/read-climate.ts";
import { checksInWords } from "../../packages/core/src/describe/checks-in-words.ts";
import { furtherChecks } from "../../packages/core/src/further-checks/further-checks.ts";
import { findInTables, materialTable } from "../../packages/core/src/materials/material-table.ts";
import type {
  AirMonths,
  BuildUp,
  Framing,
  HumidityRule,
  Material,
  Room,
  SolidLayer,
} from "../../packages/core/src/project/types.ts";
import { roomMonths } from "../../packages/core/src/rooms/room-months.ts";
import { SHIPPED_MATERIALS } from "../../packages/core/src/shipped-tables.ts";
import type { Site } from "../../packages/core/src/surroundings/far-side-months.ts";
import { assessVapourLayer, type VapourLayerData } from "../../packages/core/src/vapour-layer/assess-vapour-layer.ts";
import type { TightLayer } from "../../packages/core/src/vapour-layer/candidates.ts";
import { solid } from "../published/build-up-by-hand.ts";

/** Build-ups of the shipped materials, as a reader would make them: short to write in a test. */

const table = materialTable(SHIPPED_MATERIALS);

/** A material of the shipped table. */
export function materialNamed(name: string): Material {
  const { found } = findInTables(name, [table]);
  if (found === null) throw new Error(`no material is called ${name}`);
  return found;
}

/** A layer of a shipped material: thickness [mm], or none for a sheet. */
export function layerOf(name: string, millimetres = 0, more: Partial<SolidLayer> = {}): SolidLayer {
  const material = materialNamed(name);
  return solid(millimetres / 1000, 1, {
    type: millimetres === 0 ? "sheet" : "material",
    name: material.name,
    material,
    emissivityInner: material.emissivity,
    emissivityOuter: material.emissivity,
    facingInner: material.facingInner ?? 0,
    facingOuter: material.facingOuter ?? 0,
    ...more,
  });
}

/** Softwood studs that take 15 % of the area. */
export const studs: Framing = {
  name: "studs",
  material: materialNamed("softwood timber"),
  share: 0.15,
  origin: { kind: "fraction" },
  ofOneLayer: false,
};

/** A heated room with a humidity rule. */
export function heatedRoom(humidity: HumidityRule, setPoint = 20): Room {
  return {
    name: "indoor",
    temperature: { kind: "heated", setPoint, daysPerWeek: 7, otherwise: null },
    cooling: null,
    humidity,
    humidityWhenCooled: null,
    burstsOfSteam: false,
    pool: false,
  };
}

/** Outdoor air of a shipped climate. */
export function shippedClimate(name: string): AirMonths {
  const climate = readClimate(readFileSync(`climate/${name}.csv`, "utf8"), name);
  if (!climate.ok) throw new Error(`the climate of ${name} has problems`);
  return climateMonths(climate.value);
}

/** Outdoor air with one room, "indoor". */
export function siteOf(outdoor: AirMonths, room: Room): Site {
  return { outdoor, rooms: new Map([["indoor", roomMonths(room, outdoor, 1)]]) };
}

export interface Checked {
  calculation: BuildUpCalculation;
  vapourLayer: VapourLayerData;
  tightLayer: TightLayer | null;
  checks: ReturnType<typeof checksInWords>;
}

/** A build-up's figures with the checks beside the method. */
export function checked(buildUp: BuildUp, site: Site, room: Room): Checked {
  const calculation = figuresOfBuildUp(buildUp, site);
  const { result: vapourLayer, tightLayer } = assessVapourLayer(calculation);
  const checks = furtherChecks(buildUp, site, calculation, vapourLayer, room, 1);
  return { calculation, vapourLayer, tightLayer, checks: checksInWords(checks, buildUp) };
}
