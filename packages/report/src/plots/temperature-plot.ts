import { dewPoint } from "@warmside/core";
import { fixed } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { placeOf } from "../places.ts";
import type { SectionView } from "../section-view.ts";
import { along, layerBands } from "./layer-bands.ts";
import type { Plot } from "./plot.ts";
import { type ProfilePoint, profilePlot } from "./profile-plot.ts";
import { wetPlanes } from "./wet-planes.ts";

/**
 * Temperature and dew point through the section in its deciding month, against depth: water where they meet.
 *
 * @param view - the section
 * @returns the plot
 */
export function temperaturePlot(view: SectionView): Plot {
  const { month, indoor, outdoor, nodes } = view.deciding;
  const stretch = layerBands(view, "depth");
  const wet = wetPlanes(view, view.deciding);
  const points: ProfilePoint[] = [
    ...line(TEMPERATURE, stretch.from, indoor.temperature),
    ...nodes.flatMap((node) => line(TEMPERATURE, along(node, "depth"), node.temperature)),
    ...line(TEMPERATURE, stretch.to, outdoor.temperature),
    ...line(DEW_POINT, stretch.from, dewPoint(indoor.vapourPressure)),
    ...nodes.flatMap((node) => line(DEW_POINT, along(node, "depth"), dewPoint(node.vapourPressure))),
    ...line(DEW_POINT, stretch.to, dewPoint(outdoor.vapourPressure)),
  ];
  const spec = profilePlot({
    view,
    axis: "depth",
    stretch,
    lines: [
      { name: TEMPERATURE, colour: PALETTE.temperature.light, dash: [1, 0] },
      { name: DEW_POINT, colour: PALETTE.vapour.light, dash: [6, 4] },
    ],
    points,
    wet: wet.map(({ node, words }) => ({
      at: along(nodes[node]!, "depth"),
      value: nodes[node]!.temperature,
      words,
    })),
    xTitle: "depth from the room surface, mm",
    yTitle: "°C",
    zero: false,
  });
  return {
    title: `Temperature and dew point through the section in ${month}`,
    description: `From the room on the left, ${fixed(indoor.temperature, 1)} °C, to the outside on the right, ${fixed(
      outdoor.temperature,
      1,
    )} °C. The whole line is the temperature, the dashed line the dew point of the vapour there. ${meeting(view, wet)}`,
    spec,
  };
}

const TEMPERATURE = "temperature";
const DEW_POINT = "dew point of the vapour there";

function line(name: string, at: number, value: number): ProfilePoint[] {
  return [{ at, value, line: name }];
}

function meeting(view: SectionView, wet: readonly { node: number }[]): string {
  const first = wet[0];
  return first
    ? `They meet ${placeOf(view, first.node)}: there is water.`
    : "They do not meet: no water in this month.";
}
