import { type BadFile, bad, piece } from "./bad-file.ts";

const head = `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - { name: Studio wall, element: wall, layers: [ { material: plywood, thickness: 18 mm } ] }
  - { name: Raised floor, element: floor, layers: [ { material: plywood, thickness: 18 mm } ] }
junctions:
`;
const junction = (title: string, keys: string, code: string, says: string): BadFile =>
  bad(title, `${head}  - { name: One, ${keys} }\n`, 8, code, says);

const CHANNEL = "material: steel, channel: { sheet: 1.2 mm, flange: 50 mm, lip: 12 mm }, spacing: 600 mm";
const STUDS = "material: softwood timber, width: 45 mm, spacing: 600 mm";
const studs = (title: string, from: string, by: string, code: string, says: string): BadFile =>
  piece(title, STUDS, CHANNEL.replace(from, by), 10, code, says);
const wool = (title: string, keys: string, code: string, says: string): BadFile =>
  piece(title, "framing: studs", `framing: studs, ${keys}`, 14, code, says);

/** Junctions, steel channels, and layers that framing interrupts. */
export const BAD_JUNCTIONS: readonly BadFile[] = [
  junction("a junction of nothing", "posts: 3", "junction-no-kind", "does not say what meets"),
  junction(
    "a corner that is a window",
    "outer corner: Studio wall, window side: Studio wall",
    "junction-two-kinds",
    "outer corner and window side",
  ),
  junction("a corner with a rim", "outer corner: Studio wall, rim: 45 mm", "junction-key", "`rim` does not go with"),
  junction("a window without its frame", "window side: Studio wall", "junction-no-frame", "width: 70 mm, depth: 68 mm"),
  junction(
    "a corner of a floor",
    "outer corner: [Studio wall, Raised floor]",
    "junction-parts",
    "Raised floor (floor)",
  ),
  junction("a floor edge without a floor", "floor edge: [Studio wall]", "junction-parts", "Expected wall and floor"),
  junction("a name misspelt", "outer corner: Studio wal", "build-up-unknown", "Write `Studio wall`"),
  junction("too many posts", "outer corner: Studio wall, posts: 4", "wrong-kind", "Expected 2, 3 or solid"),
  studs("a channel with a width", "spacing", "width: 45 mm, spacing", "channel-has-its-own", "takes no `width`"),
  studs("a channel of timber", "material: steel", "material: plywood", "channel-not-metal", "made of plywood"),
  studs("a channel without spacing", ", spacing: 600 mm", "", "framing-half", "spacing is missing"),
  studs("flanges that meet", "600 mm", "40 mm", "framing-too-wide", "50 mm"),
  wool("tape with care", "taped: with care", "taped-unread", "onto the framing 20 mm"),
  wool("tape without a unit", "taped: onto the framing 20", "unit-missing", "is missing a unit"),
  wool("a gap without a unit", "gap beside framing: 2", "unit-missing", "Write `2 mm`"),
];
