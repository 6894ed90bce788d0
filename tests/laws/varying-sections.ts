import fc from "fast-check";
import {
  type SdByHumidity,
  valueAt,
} from "../../packages/core/src/further-checks/variable-resistance/sd-by-humidity.ts";
import {
  type VaryingSection,
  varyingSection,
} from "../../packages/core/src/further-checks/variable-resistance/varying-section.ts";
import { buildUp, sheet } from "../published/build-up-by-hand.ts";
import { plainSlices } from "../published/plain-section.ts";
import { between, overPowers, sections } from "../published/random-sections.ts";

/** How a layer's sd may follow its humidity: not at all, dry to wet cup, or a membrane's table. */
const rules = (sd: number): fc.Arbitrary<SdByHumidity | null> =>
  fc.oneof(
    { weight: 2, arbitrary: fc.constant(null) },
    {
      weight: 2,
      arbitrary: between(0.3, 1).map(
        (wet): SdByHumidity =>
          (humidity) =>
            valueAt(
              [
                [0.25, sd],
                [0.75, sd * wet],
              ],
              humidity,
            ),
      ),
    },
    {
      weight: 1,
      arbitrary: overPowers(0.02, 0.5).map(
        (open): SdByHumidity =>
          (humidity) =>
            valueAt(
              [
                [0.3, sd],
                [0.8, sd * open],
              ],
              humidity,
            ),
      ),
    },
  );

/** Random sections of which some layers follow their humidity. */
export const varyingSections: fc.Arbitrary<VaryingSection> = sections.chain(({ layers, line, climate }) => {
  const slices = plainSlices(layers);
  const constant = varyingSection(slices, line, climate, buildUp(layers.map(({ sd }) => sheet(sd))));
  return fc.tuple(...layers.map(({ sd }) => rules(sd))).map((follow) => ({ ...constant, follow }));
});
