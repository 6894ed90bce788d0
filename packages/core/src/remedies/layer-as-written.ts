import { isUpright } from "../project/is-upright.ts";
import type { AirLayer, BuildUp, Framing, Layer } from "../project/types.ts";
import { writeQuantity } from "../quantities/format-quantity.ts";
import type { FramingAsWritten, LayerAsWritten } from "../result/types.ts";

/**
 * A layer that a remedy adds, as written in a project file. Its material is in the table.
 *
 * @param layer - the layer
 * @param buildUp - the build-up that it is added to
 * @returns its keys, with units on quantities
 */
export function layerAsWritten(layer: Layer, buildUp: BuildUp): LayerAsWritten {
  const framing = layer.framing === null ? {} : { framing: framingAsWritten(layer.framing) };
  if (layer.type === "air") return { ...airAsWritten(layer, buildUp), ...framing };
  const { material, name, thickness, purpose } = layer;
  return {
    material: material.name,
    ...(layer.type === "sheet" ? {} : { thickness: writeQuantity(thickness, "thickness") }),
    ...(name === material.name ? {} : { name }),
    ...framing,
    ...(purpose === null ? {} : { purpose }),
  };
}

function airAsWritten(
  { thickness, name, ventilation, ventilationArea, open }: AirLayer,
  buildUp: BuildUp,
): LayerAsWritten {
  const quantity = isUpright(buildUp) ? "ventilation area upright" : "ventilation area level";
  return {
    air: writeQuantity(thickness, "thickness"),
    ventilation,
    name,
    ...(open === null ? {} : { open }),
    ...(ventilationArea === null ? {} : { "ventilation area": writeQuantity(ventilationArea, quantity) }),
  };
}

function framingAsWritten({ name, material, origin, share, ofOneLayer }: Framing): FramingAsWritten {
  if (!ofOneLayer) return name;
  const width = (value: number): string => writeQuantity(value, "width");
  switch (origin.kind) {
    case "fraction":
      return { material: material.name, fraction: writeQuantity(share, "share of the area") };
    case "channel": {
      const { sheet, flange, lip } = origin.channel;
      const channel = { sheet: writeQuantity(sheet, "thickness"), flange: width(flange), lip: width(lip) };
      return { material: material.name, spacing: writeQuantity(origin.spacing, "spacing"), channel };
    }
    case "width and spacing": {
      const other = origin.otherTimberByDefault
        ? {}
        : { "other timber": writeQuantity(origin.otherTimber, "share of the area") };
      const spacing = writeQuantity(origin.spacing, "spacing");
      return { material: material.name, width: width(origin.width), spacing, ...other };
    }
  }
}
