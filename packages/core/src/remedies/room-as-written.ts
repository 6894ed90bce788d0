import type { HumidityRule, Room } from "../project/types.ts";
import { writeQuantity } from "../quantities/format-quantity.ts";
import type { RoomChange } from "../result/types.ts";

/**
 * A room's humidity as written in a project file.
 *
 * @param room - the room as changed by a remedy
 * @returns its name and the value of `humidity`
 * @throws RangeError for a room without a humidity of its own
 */
export function roomChange({ name, humidity }: Room): RoomChange {
  return { room: name, humidity: humidityAsWritten(humidity) };
}

function humidityAsWritten(rule: HumidityRule): RoomChange["humidity"] {
  switch (rule.kind) {
    case "class":
      return `class ${rule.class}`;
    case "months": {
      const [first, ...others] = rule.relativeHumidity.map((share) => writeQuantity(share, "relative humidity"));
      return others.every((share) => share === first) ? first! : [first!, ...others];
    }
    case "by outdoor temperature":
      return `${rule.level} by outdoor temperature`;
    case "balance":
      return {
        production: writeQuantity(rule.production, "moisture production"),
        volume: writeQuantity(rule.volume, "volume"),
        "air changes": writeQuantity(rule.airChanges, "air changes"),
      };
    case "as outdoors":
      throw new RangeError("a room with the air of outdoors has no humidity of its own");
  }
}
