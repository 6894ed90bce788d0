import type { BuildUpResult, PlaneResult } from "@warmside/core";
import type { PlaneWords } from "./drawing/plane-drawing.ts";
import { fixed, gramsPerArea } from "./numbers.ts";
import { sideWords } from "./words.ts";

/** The words of a picture of the plane: the message above it, how to read it below, and the labels on it. */
export interface PlaneInWords {
  message: string;
  caption: string;
  drawn: PlaneWords;
}

/**
 * A picture of the plane in words.
 *
 * @param buildUp - a build-up of the result
 * @param plane - what the plane tells of it
 * @returns message, caption, and the words on the drawing
 */
export function planeInWords(buildUp: BuildUpResult, plane: PlaneResult): PlaneInWords {
  const { strip } = plane.asBuilt;
  const { room, far } = sideWords(buildUp);
  const names = plane.interrupted.map((index) => buildUp.layers[index]!.name).join(" and ");
  const message =
    plane.channel !== null
      ? `Heat gathers in the ${plane.framing}: U is ${fixed(plane.channel.transmittance, 2)} W/(m²·K)`
      : strip === null
        ? `Vapour that passes ${names} at the ${plane.framing} condenses nowhere`
        : `Vapour passes ${names} at the ${plane.framing}: ${gramsPerArea(strip.amount)} beside them in ${strip.month}`;
  const drawn = {
    title: `${buildUp.name} in the plane`,
    description: `A section along the build-up, ${room} on the left: isotherms in ${plane.pictureMonth}${strip === null ? "" : ", water as dots"}.`,
    inside: room,
    outside: far,
    strip: strip === null ? null : `${gramsPerArea(strip.amount)}\nin this strip\nof 50 mm`,
    coldest: null,
  };
  const caption = `To scale. Lines: temperature in ${plane.pictureMonth}, °C.${strip === null ? "" : " Dots: water at its most, the larger the more; the bracket marks the strip of 50 mm that holds most."}`;
  return { message, caption, drawn };
}
