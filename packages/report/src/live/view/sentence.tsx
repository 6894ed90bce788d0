import { SHIPPED_CLIMATES } from "@warmside/core";
import { dataAt } from "../edit/checked.ts";
import { dataOf, type Path } from "../edit/parsed.ts";
import type { Answer } from "../state/answer.ts";
import { pathOf, set } from "../state/gestures.ts";
import { state } from "../state/store.ts";
import { ChoiceField, NumberField } from "./fields.tsx";
import { RoomWords } from "./room-words.tsx";

const ELEMENTS = ["wall", "flat roof", "pitched roof", "floor"];

const PLACES = Object.values(SHIPPED_CLIMATES)
  .map(({ name, origin }) => [name, `${told(origin, "place") ?? name}, ${told(origin, "country") ?? ""}`] as const)
  .sort((one, other) => one[1].localeCompare(other[1]));

const FACES: Readonly<Record<string, string>> = { ground: "It lies on the ground.", void: "Below it is a void." };

/** What is built, where, and for whom: a sentence whose underlined words can be changed. */
export function Sentence({ answer }: { answer: Answer }) {
  const data = dataOf(state().readable!);
  const buildUp = answer.project.buildUps[answer.at]!;
  const climate = String(dataAt(data, ["climate"]));
  const name = answer.project.climate.name;
  const isShipped = Object.hasOwn(SHIPPED_CLIMATES, name) && !/\.csv$/i.test(climate);
  const elements = ELEMENTS.includes(buildUp.element) ? ELEMENTS : [buildUp.element, ...ELEMENTS];
  return (
    <section class="sentence" aria-label="What is built, and where">
      <p>
        This{" "}
        <ChoiceField
          label="What it is"
          value={buildUp.element}
          options={elements.map((element) => [element, element])}
          onChoice={(element) => set(pathOf("element"), element, null)}
        />{" "}
        stands in{" "}
        <ChoiceField
          label="Place"
          value={isShipped ? name : climate}
          options={isShipped ? PLACES : [[climate, climate], ...PLACES]}
          onChoice={(place) => set(["climate"], place, null)}
        />
        . {FACES[buildUp.faces] ?? (buildUp.faces === "outdoors" ? "" : `It faces ${buildUp.faces}.`)}{" "}
        <RoomWords path={roomPath(buildUp.room)} name={buildUp.room} data={data} /> <Rain answer={answer} data={data} />
        Target U{" "}
        <NumberField
          id="target"
          label="Target U, W/(m²·K)"
          value={buildUp.target}
          least={0.05}
          most={5}
          step={0.01}
          onNumber={(value) => set(pathOf("target"), `${value} W/(m2 K)`)}
          onEmpty={() => set(pathOf("target"), null)}
        />
        .
      </p>
    </section>
  );
}

/** Whether rain reaches the outside, where what lies there drinks it. */
function Rain({ answer, data }: { answer: Answer; data: unknown }) {
  const { element, faces, layers } = answer.project.buildUps[answer.at]!;
  const written = dataAt(data, pathOf("wetted by rain"));
  const outer = layers.at(-1);
  const drinks =
    outer?.type === "material" && ["mineral", "wood", "board", "paper"].includes(outer.material.kind ?? "");
  const isOpen = layers.some((layer) => layer.type === "air" && layer.ventilation === "well");
  if (written === undefined && (element !== "wall" || faces !== "outdoors" || !drinks || isOpen)) return null;
  const value = written === undefined ? "" : written === true ? "yes" : written === false ? "no" : String(written);
  return (
    <>
      Rain reaches its outside:{" "}
      <ChoiceField
        label="Rain reaches its outside"
        value={value}
        options={[
          ["", "not said"],
          ["no", "no"],
          ["sheltered", "seldom, it is sheltered"],
          ["yes", "yes"],
        ]}
        onChoice={(choice) => set(pathOf("wetted by rain"), choice === "" ? null : choice, null)}
      />
      .{" "}
    </>
  );
}

function roomPath(room: string): Path {
  return room === "indoor" ? ["indoor"] : ["rooms", room];
}

function told(origin: readonly string[], key: string): string | undefined {
  return origin.map((line) => line.split(": ")).find(([name]) => name === key)?.[1];
}
