/**
 * The public names of @warmside/core, in stage order.
 */

// problems: data, and the words for them
export { nearNames } from "./problems/near-names.ts";
export { ProblemsError } from "./problems/problems-error.ts";
export type { Problem, ProblemPath, Reading, TextPosition, WordedProblem } from "./problems/types.ts";
export { problemInText, wordProblem } from "./problems/word-problem.ts";
export { inSpeech } from "./problems/wording.ts";
export type { ProblemCode } from "./problems/wordings.ts";

// constants
export {
  DAYS_IN_MONTH,
  MONTH_NAMES,
  SECONDS_PER_DAY,
  USUAL_EMISSIVITY,
  VAPOUR_PERMEABILITY_OF_AIR,
} from "./constants.ts";

// quantities with units
export {
  celsiusFromFahrenheit,
  metresFromInches,
  resistanceFromImperial,
  sdFromPerms,
  sdFromVapourResistance,
} from "./quantities/convert.ts";
export { formatInShownUnit, formatNumber, formatQuantity, writeQuantity } from "./quantities/format-quantity.ts";
export type { QuantityName } from "./quantities/vocabulary.ts";
export { readQuantity } from "./quantities/read-quantity.ts";

// air and vapour
export { dewPoint } from "./air/dew-point.ts";
export { humidityByVolume, relativeHumidity, vapourPressure } from "./air/humidity.ts";
export { saturationPressure } from "./air/saturation-pressure.ts";

// the project
export type { SuppliedFile } from "./project/reading-context.ts";
export { type ProjectKey, projectKeys } from "./project/schema/project-keys.ts";
export { projectJsonSchema } from "./project/schema/project-json-schema.ts";
export type { ProjectFile } from "./project/schema/schema-project.ts";
export type * from "./project/types.ts";

// shipped tables, materials
export { SHIPPED_CLIMATES, SHIPPED_EVERYDAY_NAMES, SHIPPED_MATERIALS } from "./shipped-tables.ts";
export { findInTables, type MaterialTable, materialTable } from "./materials/material-table.ts";
export { everydayName } from "./materials/everyday-names.ts";
export { readEverydayNames } from "./materials/read-everyday-names.ts";
export { readMaterialTable } from "./materials/read-material-table.ts";
export { readPriceTable } from "./materials/read-price-table.ts";

// outdoor climate
export { correctForAltitude, STANDARD_LAPSE_RATE } from "./climate/altitude.ts";
export { checkFit, type FitNote } from "./climate/check-fit.ts";
export { climateMonths } from "./climate/climate-months.ts";
export { readAltitude, readDegrees } from "./climate/degrees.ts";
export { type NearClimate, nearestClimates, type PlaceOnEarth } from "./climate/nearest-climates.ts";
export { readClimate } from "./climate/read-climate.ts";
export { applySeverity, MEAN_YEAR, ONE_IN_TEN_COLDER, ONE_IN_TEN_WARMER } from "./climate/severity.ts";

// indoor climate
export { type ImpossibleMonth, impossibleMonths } from "./rooms/impossible-months.ts";
export { roomMonths } from "./rooms/room-months.ts";

// build-ups, rooms and projects without a project file
export { type BuildUpValues, buildUp } from "./builders/build-up.ts";
export { type FramingValues, framing } from "./builders/framing.ts";
export { airLayer, layer } from "./builders/layer.ts";
export { type MaterialValues, material } from "./builders/material.ts";
export { type ProjectValues, project } from "./builders/project.ts";
export { type RoomValues, room } from "./builders/room.ts";

// a project file, read
export { readProject, readProjectOrThrow, type Supplies } from "./read-project.ts";

// the result
export type * from "./result/types.ts";

// heat
export { METAL_CONDUCTIVITY } from "./heat/bridging.ts";
export { LARGEST_LIMITS_RATIO } from "./heat/combined-resistance.ts";
export { VOID_VENTILATION_FACTOR, WELL_INSULATED_SHAPE } from "./heat/ground-floor.ts";
export { meetsTarget } from "./heat/target.ts";
export { CRITICAL_SURFACE_HUMIDITY } from "./heat/temperature-factor.ts";
export type { HeatCalculation } from "./heat/types.ts";

// what surrounds the build-ups
export type { FarSide, Site } from "./surroundings/far-side-months.ts";
export {
  type AssessmentSites,
  type PlaceAndRooms,
  type Surroundings,
  surroundingsOf,
} from "./surroundings/surroundings.ts";

// heat → year: figures only
export type { RepeatingYear, SectionYear } from "./year/types.ts";
export { VERDICTS } from "./year/verdicts.ts";
export {
  type BuildUpCalculation,
  type CalculationOptions,
  calculateBuildUp,
  type SectionCalculation,
} from "./calculate-build-up.ts";
export { withFactorsOfJunctions } from "./plane-checks/project-junctions.ts";

// checks beside the method
export { WOOD_MOISTURE_LIMIT } from "./further-checks/wood/wood-moisture.ts";

// what counts as a trace of water
export { TRACE } from "./findings/amount-limits.ts";
export { isFinding } from "./findings/is-finding.ts";
export { sectionInWords } from "./findings/words/places.ts";

// the figures in the shape of the result
export { moistureResult } from "./describe/moisture-result.ts";

// vapour layer, findings, judgement
export { assessBuildUp } from "./assess-build-up.ts";

// studies
export { CLIMATES_FOR_PLACE, studyPlacement } from "./studies/placement.ts";
export { sheetPlaces } from "./studies/sheet-places.ts";
export { varyThickness } from "./studies/variation.ts";
export { findVariationLayer, type VariationLayer } from "./studies/variation/find-variation-layer.ts";
export { fromThickness } from "./studies/variation/variation-in-words.ts";
export { MOST_VARIATION_STEPS } from "./studies/variation/thicknesses.ts";
export type { VariationQuestion } from "./studies/variation/types.ts";
export { compareVariants } from "./studies/variants.ts";
export { moneyInWords } from "./studies/variants/variant-in-words.ts";
export { latinHypercube, type SampleTable } from "./studies/spread/latin-hypercube.ts";
export {
  emptyOutcomes,
  JUDGEMENTS,
  type SpreadQuestion,
  spreadQuestion,
} from "./studies/spread/spread-question.ts";
export type { SpreadInput, SpreadOutcomes } from "./studies/spread/types.ts";

// a whole project
export { assessProject } from "./assess-project.ts";

// weather records (not in the assessing flow)
export { climateTable, type RecordsPlace } from "./records/climate-table.ts";
export { createRecordReader, type RecordReader, readRecords } from "./records/record-reader.ts";
export type * from "./records/types.ts";
