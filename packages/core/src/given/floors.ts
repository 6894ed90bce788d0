import { keys, oneOf, orNull, quantity, truth } from "./checks.ts";
import type { Check } from "./faults.ts";

const soil = oneOf("clay or silt", "sand or gravel", "rock", "unknown");

/** A slab on ground. */
export const checkGround: Check = keys({
  area: quantity("area"),
  perimeter: quantity("length"),
  wallThickness: quantity("thickness of a wall"),
  soil,
  edgeInsulation: orNull(
    keys({
      resistance: quantity("thermal resistance"),
      thickness: quantity("thickness"),
      extent: quantity("extent"),
      upright: truth,
    }),
  ),
});

/** A ventilated void under a suspended floor. */
export const checkVoid: Check = keys({
  area: quantity("area"),
  perimeter: quantity("length"),
  wallThickness: quantity("thickness of a wall"),
  soil,
  height: quantity("height"),
  wallTransmittance: quantity("transmittance"),
  openings: quantity("openings of a void"),
  windSpeed: quantity("wind speed"),
  shelter: oneOf("sheltered", "average", "exposed"),
  groundInsulation: quantity("thermal resistance"),
});
