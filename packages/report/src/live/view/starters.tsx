import { type Layer, readProjectOrThrow } from "@warmside/core";
import { hatchOf, patternDefinitions, patternId } from "../../drawing/patterns.ts";
import { STARTERS, type Starter } from "../goods/starters.ts";
import { replaceFile, show, state } from "../state/store.ts";

const WIDTH = 104;
const HEIGHT = 66;

/** What a project can begin with, each with its picture; shown at first, and when a new one is asked for. */
export function Starters() {
  const { isChoosingStarter, text, history } = state();
  const isAtFirst = history.done.length === 0 && STARTERS.some((starter) => starter.text === text);
  if (!isChoosingStarter && !isAtFirst) return null;
  return (
    <section class="starters" aria-labelledby="starters-head">
      <h2 id="starters-head">Begin with</h2>
      <ul>
        {STARTERS.map((starter) => (
          <li key={starter.name}>
            <button
              type="button"
              aria-current={starter.text === text ? "true" : undefined}
              onClick={() => begin(starter)}
            >
              <Picture starter={starter} />
              <b>{starter.name}</b>
              <small>{starter.words}</small>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function begin({ text, fileName }: Starter): void {
  replaceFile(text, fileName);
  show({ isChoosingStarter: false });
}

/** The starter's section, small: standing for walls, lying for roofs and floors. */
function Picture({ starter }: { starter: Starter }) {
  const { lies, isRoomBelow, bands } = pictureOf(starter);
  const id = `starter-${starter.name.replaceAll(" ", "-")}`;
  return (
    <svg width={WIDTH} height={HEIGHT} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <g
        dangerouslySetInnerHTML={{
          __html: patternDefinitions(
            id,
            bands.map(({ hatch }) => hatch),
          ),
        }}
      />
      {bands.map(({ from, to, hatch }, index) => {
        const [start, end] = isRoomBelow ? [1 - to, 1 - from] : [from, to];
        const box = lies
          ? { x: 2, width: WIDTH - 4, y: 4 + start * (HEIGHT - 8), height: (end - start) * (HEIGHT - 8) }
          : { y: 2, height: HEIGHT - 4, x: 10 + start * (WIDTH - 20), width: (end - start) * (WIDTH - 20) };
        if (to > from) return <rect key={index} {...box} fill={`url(#${patternId(id, hatch)})`} class="band" />;
        return (
          <path
            key={index}
            class="sheet"
            d={lies ? `M${box.x} ${box.y}h${box.width}` : `M${box.x} ${box.y}v${box.height}`}
          />
        );
      })}
    </svg>
  );
}

function pictureOf(starter: Starter): Picture {
  const known = pictures.get(starter);
  if (known !== undefined) return known;
  const { element, layers } = readProjectOrThrow(starter.text).buildUps[0]!;
  const whole = layers.reduce((sum, { thickness }) => sum + thickness, 0);
  let at = 0;
  const bands = layers.map((layer) => {
    const from = at;
    at += layer.thickness / whole;
    return { from, to: at, hatch: hatchOf(asDrawn(layer)) };
  });
  const made = { lies: element !== "wall", isRoomBelow: element !== "wall" && element !== "floor", bands };
  pictures.set(starter, made);
  return made;
}

function asDrawn(layer: Layer): Parameters<typeof hatchOf>[0] {
  if (layer.type === "air") return { type: "air", kind: null, group: null, conductivity: null, density: null };
  const { kind, group, conductivity, density } = layer.material;
  return { type: layer.type, kind, group, conductivity, density };
}

interface Picture {
  lies: boolean;
  isRoomBelow: boolean;
  bands: { from: number; to: number; hatch: ReturnType<typeof hatchOf> }[];
}

const pictures = new Map<Starter, Picture>();
