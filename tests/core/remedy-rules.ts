import type { JudgedBuildUp } from "../../packages/core/src/assess-build-up.ts";
import type { Material } from "../../packages/core/src/project/types.ts";
import type { Situation } from "../../packages/core/src/remedies/types.ts";
import type { BuildUpResult } from "../../packages/core/src/result/types.ts";

/**
 * What a remedied build-up must keep to beyond its judgement, written down a second time: nothing of the search's own
 * rules is used. Words for each rule that it breaks.
 */
export function rulesBroken(
  before: BuildUpResult,
  { warmSide }: Situation,
  { evidence: { buildUp, calculation }, findings }: JudgedBuildUp,
): string[] {
  const broken: string[] = [];
  const water = findings.find((finding) => finding.code === "condensation-dries-out")?.figures;
  if (water?.year === "reported" && water.amount > water.limit / 2) broken.push("over half of its limit");
  if (mostOnGypsumOrPaper(calculation) > 0.2) broken.push("over 200 g/m² on gypsum or paper");
  const below = findings.find((finding) => finding.code === "insulation-below-deck")?.figures.shareBelow ?? 0;
  if (below > 1 / 3) broken.push("over a third of the resistance below the deck");
  const blamed = before.findings.some(
    ({ code, severity }) =>
      code === "vapour-layer-cold-side" || (code === "tight-sheet-under-floor" && severity === "fault"),
  );
  if (!blamed || warmSide === "neither") return broken;
  const { counted } = calculation.heat;
  const sumOf = (layers: typeof counted): number => layers.reduce((sum, { resistance }) => sum + resistance, 0);
  for (const { index, layer } of counted) {
    if (layer.type !== "sheet" || layer.purpose === "weather skin") continue;
    if ((layer.material.equivalentAirLayerThickness ?? 0) < 0.5 || layer.material.group === "roofing") continue;
    const beyond = counted.filter((other) => (warmSide === "room" ? other.index > index : other.index < index));
    if (sumOf(beyond) < (2 / 3) * sumOf(counted) - 1e-9) broken.push(`${layer.name} (${buildUp.name}) still lies cold`);
  }
  return broken;
}

/** Most water at a month's end in neighbouring wet nodes that touch gypsum or paper [kg/m²]. */
function mostOnGypsumOrPaper({ sections, buildUp }: JudgedBuildUp["evidence"]["calculation"]): number {
  let most = 0;
  for (const { line, withinMonth, path } of sections) {
    const isSoft = (at: number): boolean => {
      const layer = buildUp.layers[line.layer[at]!];
      if (layer === undefined) return false;
      const framed = layer.framing !== null && path.through.includes(layer.framing.name);
      const material: Material | null = framed ? layer.framing!.material : layer.type === "air" ? null : layer.material;
      return material?.kind === "paper" || material?.name.includes("gypsum") === true;
    };
    for (const held of withinMonth.startMonth === null ? [] : withinMonth.held) {
      let sum = 0;
      let touches = false;
      for (let node = 0; node < line.count; node += 1) {
        const wet = held[node]! > 0;
        sum = wet ? sum + held[node]! : 0;
        touches = wet && (touches || isSoft(node) || isSoft(Math.min(node + 1, line.count - 1)));
        if (touches) most = Math.max(most, sum);
      }
    }
  }
  return most;
}
