import { dataAt } from "../edit/checked.ts";
import type { Path } from "../edit/parsed.ts";
import { set, setAll } from "../state/gestures.ts";
import { ChoiceField, NumberField } from "./fields.tsx";

/** Uses of a room in plain words: how damp its air is. */
const USES: readonly (readonly [string, string])[] = [
  ["class 1", "a store"],
  ["class 2", "an office or studio"],
  ["class 3", "something not settled yet"],
  ["class 4", "a kitchen or hall"],
  ["class 5", "a laundry or pool"],
  ["measured", "a room of measured humidity"],
];

const DAYS: readonly (readonly [string, string])[] = [
  ["", "every day"],
  ["5", "on weekdays"],
  ["2", "only at weekends"],
];

/** How a room is heated, used and cooled. */
export function RoomWords({ path, name, data }: { path: Path; name: string; data: unknown }) {
  const room = dataAt(data, path) as Record<string, unknown> | undefined;
  const its = name === "indoor" ? "Its room" : `Its room, ${name},`;
  const isUnheated = room?.unheated === true;
  if (room === undefined || (room.heating === undefined && !isUnheated)) return <>{its} is as the file says. </>;
  return (
    <>
      {its} is{" "}
      <ChoiceField
        label="Heating"
        value={isUnheated ? "not heated" : "heated to"}
        options={[
          ["heated to", "heated to"],
          ["not heated", "not heated"],
        ]}
        onChoice={(choice) => (choice === "not heated" ? set(path, { unheated: true }, null) : set(path, USUAL, null))}
      />
      {isUnheated ? ". " : <HeatedRoom path={path} room={room} />}
    </>
  );
}

function HeatedRoom({ path, room }: { path: Path; room: Record<string, unknown> }) {
  const days = room["heated days"] === undefined ? "" : String(room["heated days"]);
  const cooling = numberIn(room.cooling, "°C");
  return (
    <>
      {" "}
      <NumberField
        id="heating"
        label="Heated to, °C"
        value={numberIn(room.heating, "°C")}
        least={0}
        most={35}
        onNumber={(value) => set([...path, "heating"], `${value} °C`)}
      />{" "}
      °C{" "}
      <ChoiceField
        label="When it is heated"
        value={days}
        options={DAYS.some(([key]) => key === days) ? DAYS : [[days, `on ${days} days a week`], ...DAYS]}
        onChoice={(choice) => set([...path, "heated days"], choice === "" ? null : Number(choice), null)}
      />{" "}
      and used as <Use path={path} written={room.humidity} />
      {". "}In summer it is{" "}
      <ChoiceField
        label="Cooling in summer"
        value={room.cooling === undefined ? "no" : "yes"}
        options={[
          ["no", "not cooled"],
          ["yes", "cooled to"],
        ]}
        onChoice={(choice) => set([...path, "cooling"], choice === "yes" ? "24 °C" : null, null)}
      />
      {room.cooling === undefined ? null : (
        <>
          {" "}
          <NumberField
            id="cooling"
            label="Cooled to, °C"
            value={cooling}
            least={10}
            most={35}
            onNumber={(value) => set([...path, "cooling"], `${value} °C`)}
          />{" "}
          °C
        </>
      )}
      {". "}
    </>
  );
}

function Use({ path, written }: { path: Path; written: unknown }) {
  const share = numberIn(written, "%");
  const plain = typeof written === "string" ? written.trim().toLowerCase() : "";
  const value = share !== null ? "measured" : USES.some(([key]) => key === plain) ? plain : "as written";
  return (
    <>
      <ChoiceField
        label="Use of the room: how damp its air is"
        value={value}
        options={value === "as written" ? [["as written", "the file says"], ...USES] : USES}
        onChoice={(choice) => {
          if (choice !== "as written") setAll([[[...path, "humidity"], choice === "measured" ? "50 %" : choice]]);
        }}
      />
      {share === null ? null : (
        <>
          {" "}
          <NumberField
            id="humidity"
            label="Relative humidity, %"
            value={share}
            least={1}
            most={99}
            onNumber={(value) => set([...path, "humidity"], `${value} %`)}
          />{" "}
          %
        </>
      )}
    </>
  );
}

/** The number of a quantity that is written in this unit; null for anything else. */
function numberIn(written: unknown, unit: string): number | null {
  const match = /^\s*([+-]?\d+(?:\.\d+)?)\s*(\D+?)\s*$/.exec(String(written ?? ""));
  return match?.[2] === unit ? Number(match[1]) : null;
}

const USUAL = { heating: "20 °C", humidity: "class 3" };
