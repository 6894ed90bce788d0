import { registerAssess } from "./assess.ts";
import { registerCheck } from "./check.ts";
import { registerClimate } from "./climate/register-climate.ts";
import { registerCompare } from "./compare.ts";
import { registerCompletion } from "./completion.ts";
import { registerExplain } from "./explain.ts";
import { registerMaterials } from "./materials.ts";
import { registerNew } from "./new.ts";
import { registerPage } from "./page.ts";
import { registerPlace } from "./place.ts";
import type { Registration } from "./registration.ts";
import { registerSchema } from "./schema.ts";
import { registerSpread } from "./spread.ts";
import { registerVary } from "./vary.ts";

/** Every command, in the order of the help. */
export const COMMANDS: readonly Registration[] = [
  registerAssess,
  registerPage,
  registerCheck,
  registerPlace,
  registerCompare,
  registerVary,
  registerSpread,
  registerClimate,
  registerMaterials,
  registerExplain,
  registerNew,
  registerSchema,
  registerCompletion,
];
