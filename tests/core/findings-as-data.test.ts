import { describe, expect, test } from "vitest";
import { isFinding } from "../../packages/core/src/findings/is-finding.ts";
import type { BuildUpResult } from "../../packages/core/src/result/types.ts";
import { assessText } from "./corpus.ts";

const wall = (room: string, board: string, sheet = ""): string => `
project: Alder Row pottery studio
climate: de-bilt
rooms:
  ${room}: { heating: 20 °C, humidity: class 5 }
build-ups:
  - name: Wall
    element: wall
    room: ${room}
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
${sheet}      - { material: mineral wool slab, thickness: 140 mm }
      - { material: oriented strand board, name: ${board}, thickness: 11 mm }
`;

/** Everything but the room's name, which sentences hold. */
const withoutRoom = (result: BuildUpResult, room: string): unknown =>
  JSON.parse(
    JSON.stringify(result, sidesMarked).replaceAll(`the ${room}`, "the room").replaceAll(`"${room}"`, '"room"'),
  );

function sidesMarked(key: string, value: unknown): unknown {
  return key === "warmSide" || key === "from" ? `side ${value}` : value;
}

describe("a room's name decides nothing", () => {
  // A wall with a skin on its cold side: message, findings and remedies all speak of the warm side.
  const sheet = "      - { material: polyethylene sheet 0.15 mm }\n";
  test.each(["neither", "inside", "outside"])("a room called %s is a room like another", (name) => {
    for (const more of ["", sheet]) {
      const named = assessText(wall(name, "board", more));
      const other = assessText(wall("workroom", "board", more));
      expect(withoutRoom(named, name)).toEqual(withoutRoom(other, "workroom"));
      expect(named.vapourLayer).toMatchObject({ warmSide: "inside", warmSideName: name });
    }
  });
});

describe("a finding's short form", () => {
  const { judgement, findings } = assessText(wall("workroom", "Ext. Board 11"));

  test("is a whole sentence, whatever full stops a layer's name has", () => {
    expect(judgement.short).toContain("Ext. Board 11");
    expect(judgement.short).toMatch(/g\/m².*\.$/);
  });

  test("begins the message, and the judgement's is that of the finding that decides", () => {
    for (const { short, message } of findings) expect(message.startsWith(short)).toBe(true);
    const decisive = findings.find(({ id }) => id === judgement.decisive)!;
    expect(judgement).toMatchObject({ short: decisive.short, message: decisive.message });
  });
});

describe("a finding's figures are data", () => {
  const { findings, judgement } = assessText(wall("workroom", "outer board"));
  const water = [
    ...findings.filter(isFinding("condensation-too-much")),
    ...findings.filter(isFinding("stays-wet")),
  ][0]!;

  test("where water is: two parts of layers by index, and the way through by kind", () => {
    expect(water.figures.place).toMatchObject({
      extent: "node",
      inner: { layer: 1 },
      outer: { layer: 2, part: "whole" },
    });
    expect(water.figures.section).toEqual({ kind: "whole", through: [] });
    expect(water.figures.limitBy).toMatchObject({ kind: "dry mass", material: "oriented strand board" });
  });

  test("no sentence stands in them", () => {
    const words: string[] = [];
    const collect = (value: unknown): void => {
      if (typeof value === "string") words.push(value);
      else if (typeof value === "object" && value !== null) for (const each of Object.values(value)) collect(each);
    };
    for (const { figures } of findings) collect(figures);
    expect(words.length).toBeGreaterThan(5);
    expect(words.filter((word) => /[.:;] /.test(word) || word.split(" ").length > 6)).toEqual([]);
  });

  test("conditions are told by the findings that make them", () => {
    const conditional = assessText(
      wall("workroom", "outer board", "      - { material: polyethylene sheet 0.15 mm }\n"),
    );
    const { conditions, conditionsFrom } = conditional.judgement;
    expect(conditionsFrom).toHaveLength(conditions.length);
    expect(conditionsFrom.map((id) => conditional.findings.find((one) => one.id === id)!.advice)).toEqual(conditions);
    expect(judgement.conditionsFrom).toEqual([]);
  });
});
