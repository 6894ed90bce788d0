import { MONTH_NAMES, type SectionResult } from "@warmside/core";
import { fixed, gramsPerArea } from "../../numbers.ts";
import { show, state } from "../state/store.ts";
import { monthShown } from "./section-part.tsx";

/** The names as any text may be looked for among them. */
const MONTHS: readonly string[] = MONTH_NAMES;
/** October, where no water says in which month a year begins. */
const USUAL_START = 9;
const HEIGHT = 84;
/** A year is as high as the strip from this amount on [kg/m²], so that little water looks little. */
const FULL = 0.2;

/** The year from the month in which water begins: bars of what is held, and a frame that slides over them. */
export function Year({ section }: { section: SectionResult }) {
  const first = section.startMonth === null ? USUAL_START : MONTHS.indexOf(section.startMonth);
  const order = Array.from({ length: 12 }, (_, index) => (index + first) % 12);
  const held = section.months.map(({ planes }) => planes.reduce((sum, plane) => sum + plane.held, 0));
  const most = Math.max(FULL, ...held);
  const month = Math.round(monthShown(section)) % 12;
  const words = inWords(section, month, held[month]!);
  return (
    <section class="year" aria-labelledby="year-head">
      <div class="year-head">
        <h2 id="year-head">The year</h2>
        <button type="button" aria-pressed={state().isRunning} onClick={() => run(first, monthShown(section))}>
          {state().isRunning ? "Stop" : "Run the year"}
        </button>
      </div>
      <div class="strip">
        <svg viewBox={`0 0 1200 ${HEIGHT}`} preserveAspectRatio="none" height={HEIGHT} aria-hidden="true">
          {order.map((at, index) => {
            const tall = held[at]! > 0 ? Math.max(2, (held[at]! / most) * (HEIGHT - 8)) : 0;
            return (
              <rect key={at} class="bar-of-month" x={index * 100 + 12} y={HEIGHT - tall} width="76" height={tall} />
            );
          })}
          <path class="base" d={`M0 ${HEIGHT - 0.5}H1200`} />
        </svg>
        <ol aria-hidden="true">
          {order.map((at) => (
            <li key={at} class={at === month ? "is-shown" : ""}>
              <b>{MONTH_NAMES[at]!.slice(0, 3)}</b>
              <span>{fixed(section.months[at]!.outdoor.temperature, 0)}°</span>
            </li>
          ))}
        </ol>
        <input
          type="range"
          id="month"
          min="0"
          max="11"
          step="1"
          value={order.indexOf(month)}
          aria-label="Month"
          aria-valuetext={words}
          onInput={({ currentTarget }) => show({ month: order[currentTarget.valueAsNumber]!, isRunning: false })}
        />
      </div>
      <p class="month-words">{words}</p>
    </section>
  );
}

function inWords({ months }: SectionResult, month: number, held: number): string {
  const { month: name, planes } = months[month]!;
  const change = planes.reduce((sum, plane) => sum + plane.change, 0);
  if (months.every(({ planes: all }) => all.every((plane) => plane.held === 0)))
    return `${name}: no water, in this month or any other.`;
  const moves =
    change > 0
      ? `${gramsPerArea(change)} condense`
      : change < 0
        ? `${gramsPerArea(-change)} dry`
        : "nothing condenses or dries";
  return `${name}: ${moves}, ${held > 0 ? `${gramsPerArea(held)} are held` : "none is left"}.`;
}

/** Runs from the month that is shown, or from the start; month by month where motion is not wanted. */
function run(first: number, shown: number): void {
  if (state().isRunning) {
    show({ isRunning: false, month: Math.round(shown) % 12 });
    return;
  }
  const isCalm = matchMedia("(prefers-reduced-motion: reduce)").matches;
  const placed = (Math.round(shown) - first + 12) % 12;
  const from = placed === 11 ? 0 : placed;
  const begun = performance.now();
  const step = (now: number): void => {
    if (!state().isRunning) return;
    const at = Math.min(11, from + Math.max(0, now - begun) / MONTH_LASTS);
    show({ month: ((isCalm || at === 11 ? Math.floor(at) : at) + first) % 12, isRunning: at < 11 });
    if (at < 11) requestAnimationFrame(step);
  };
  show({ isRunning: true, month: (from + first) % 12 });
  requestAnimationFrame(step);
}

/** [ms] */
const MONTH_LASTS = 650;
