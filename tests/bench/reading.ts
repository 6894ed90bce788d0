import { readProject } from "../../packages/core/src/read-project.ts";
import { CROWDED_FILES, inLayers, PLYWOOD } from "../hostile/project-files/crowded-files.ts";
import { ratioOf } from "./measure.ts";
import type { Measure } from "./table.ts";

/** How full the files are. */
const MANY = 5000;

/** Cost per character of the slowest bad file over that of a valid one: no text may be expensive to refuse. */
export function badOverValidFile(): Measure[] {
  const valid = inLayers(MANY, () => PLYWOOD);
  const ratios = Object.values(CROWDED_FILES).map((make) => {
    const text = make(MANY);
    const read = (file: string) => (): number => Number(readProject(file).ok);
    const { ratio } = ratioOf({ work: read(text), calls: 1 }, { work: read(valid), calls: 1 }, 5);
    return ratio / (text.length / valid.length);
  });
  return [
    {
      name: "badOverValidFile",
      value: Math.max(...ratios),
      unit: "times",
      goal: { atMost: 20 },
      what: "slowest bad project file over a valid one, per character",
    },
  ];
}
