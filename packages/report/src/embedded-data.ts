import type { ComparisonStudy, NodeState, ProjectResult, SectionResult } from "@warmside/core";
import { roundFigures } from "./round-figures.ts";

/**
 * The result as it travels inside the page: six significant digits, node by node for the governing sections and month
 * by month for the others. Where a node lies is the same in every month and is told in January alone.
 *
 * @param result - the project's result
 * @param comparison - how much the page tells of variants: what there is to buy travels only with the whole
 * @returns plain data, of the result's shape but for what is left out
 */
export function embeddedData(result: ProjectResult, comparison: "short" | "whole" = "short"): unknown {
  const buildUps = result.buildUps.map((buildUp) => {
    const { moisture } = buildUp;
    if (moisture === null) return buildUp;
    const governing = moisture.governing.index;
    const sections = moisture.sections.map((section) => leaner(section, section.index === governing));
    return { ...buildUp, moisture: { ...moisture, governing, sections } };
  });
  if (result.comparison === undefined || comparison === "whole") return roundFigures({ ...result, buildUps });
  return roundFigures({ ...result, buildUps, comparison: withoutGoods(result.comparison) });
}

function withoutGoods(study: ComparisonStudy): unknown {
  const buildUps = study.buildUps.map((buildUp) => ({
    ...buildUp,
    rows: buildUp.rows.map(({ goods: _, ...row }) => row),
  }));
  return { ...study, buildUps };
}

function leaner(section: SectionResult, governs: boolean): unknown {
  const months = section.months.map((month, index) => {
    if (!governs) return { ...month, nodes: [] };
    return index === 0 ? month : { ...month, nodes: month.nodes.map(stateAlone) };
  });
  return { ...section, months };
}

function stateAlone({ node, temperature, saturationPressure, vapourPressure }: NodeState): Partial<NodeState> {
  return { node, temperature, saturationPressure, vapourPressure };
}
