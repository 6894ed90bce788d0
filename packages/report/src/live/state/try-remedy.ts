import type { LayerChange, Remedy } from "@warmside/core";
import type { Data, Path } from "../edit/parsed.ts";
import { type Entry, rearrange } from "../edit/rearrange.ts";
import { removeKey } from "../edit/remove-key.ts";
import { setValue } from "../edit/set-value.ts";

/** What a remedy does to a list of layers: entries in their new order, and keys of layers that stay. */
interface Plan {
  entries: Entry[];
  /** For layers by their old index. */
  keys: [layer: number, key: string, value: Data][];
}

/**
 * A project file with a remedy made in it, as one edit: the same changes that the remedy tells in the language of
 * variants.
 *
 * @param text - the file
 * @param remedy - its changes of layers, and of a room
 * @param buildUp - path of the build-up
 * @param count - how many layers it has
 * @returns the text; null where it cannot be edited without loss
 */
export function withRemedy(
  text: string,
  { changes, removes, roomChange }: Pick<Remedy, "changes" | "removes" | "roomChange">,
  buildUp: Path,
  count: number,
): string | null {
  const { entries, keys } = planOf(changes, count);
  let made: string | null = text;
  for (const [layer, key, value] of keys) {
    made = made === null ? null : setValue(made, [...buildUp, "layers", layer, key], value);
  }
  for (const key of removes) made = made === null ? null : removeKey(made, [...buildUp, key]);
  if (made !== null && changes.length > 0) made = rearrange(made, [...buildUp, "layers"], entries);
  if (made === null || roomChange === null) return made;
  const room = roomChange.room === "indoor" ? ["indoor"] : ["rooms", roomChange.room];
  return setValue(made, [...room, "humidity"], roomChange.humidity);
}

function planOf(changes: readonly LayerChange[], count: number): Plan {
  const entries: Entry[] = Array.from({ length: count }, (_, index) => index);
  const keys: Plan["keys"] = [];
  for (const { at, to, change } of changes) {
    if ("add" in change) entries.splice(at, 0, whole(change.add));
    else if ("remove" in change) entries.splice(at, 1);
    else if ("swap" in change) entries[at] = whole(change.for);
    else if ("move" in change) entries.splice(to!, 0, entries.splice(at, 1)[0]!);
    else {
      const { set: _, ...values } = change;
      const entry = entries[at]!;
      if (typeof entry === "number")
        keys.push(
          ...Object.entries(whole(values)).map(([key, value]) => [entry, key, value] as [number, string, Data]),
        );
      else entries[at] = { ...(entry as Record<string, Data>), ...whole(values) };
    }
  }
  return { entries, keys };
}

/** Written data without the keys that say nothing. */
function whole(written: object): Record<string, Data> {
  return Object.fromEntries(Object.entries(written).filter(([, value]) => value !== undefined));
}
