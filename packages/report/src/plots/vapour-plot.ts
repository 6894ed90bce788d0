import { fixed } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { placeOf } from "../places.ts";
import type { SectionView } from "../section-view.ts";
import { along, layerBands } from "./layer-bands.ts";
import type { Plot } from "./plot.ts";
import { profilePlot } from "./profile-plot.ts";
import { wetPlanes } from "./wet-planes.ts";

/**
 * Vapour pressure and saturation pressure in the deciding month, against equivalent air layer thickness:
 * there the vapour line is straight between places with water.
 *
 * @param view - the section
 * @returns the plot
 */
export function vapourPlot(view: SectionView): Plot {
  const { month, indoor, outdoor, nodes } = view.deciding;
  const stretch = layerBands(view, "sd");
  const wet = wetPlanes(view, view.deciding);
  const points = [
    ...nodes.map((node) => ({ at: along(node, "sd"), value: node.saturationPressure, line: SATURATION })),
    { at: stretch.from, value: indoor.vapourPressure, line: VAPOUR },
    ...nodes.map((node) => ({ at: along(node, "sd"), value: node.vapourPressure, line: VAPOUR })),
    { at: stretch.to, value: outdoor.vapourPressure, line: VAPOUR },
  ];
  const spec = profilePlot({
    view,
    axis: "sd",
    stretch,
    lines: [
      { name: SATURATION, colour: PALETTE.temperature.light, dash: [1, 0] },
      { name: VAPOUR, colour: PALETTE.vapour.light, dash: [6, 4] },
    ],
    points,
    wet: wet.map(({ node, words }) => ({ at: along(nodes[node]!, "sd"), value: nodes[node]!.vapourPressure, words })),
    xTitle: "sd from the room surface, m of still air",
    yTitle: "Pa",
    zero: true,
  });
  const first = wet[0];
  return {
    title: `Vapour pressure and saturation pressure through the section in ${month}`,
    description: `From the room on the left, ${fixed(indoor.vapourPressure, 0)} Pa, to the outside on the right, ${fixed(
      outdoor.vapourPressure,
      0,
    )} Pa, each layer as wide as its resistance to vapour. The whole line is the most the air can hold, the dashed line the vapour there is. ${
      first ? `They meet ${placeOf(view, first.node)}.` : "They do not meet."
    }`,
    spec,
  };
}

const SATURATION = "saturation pressure";
const VAPOUR = "vapour pressure";
