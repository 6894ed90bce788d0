import { type BuildUpResult, type JudgementWord, meetsTarget, type SectionResult } from "@warmside/core";
import { CLASSES } from "../../judgement-icons.ts";
import { fixed } from "../../numbers.ts";
import { vapourLayerKind } from "../../vapour-layer-kind.ts";
import { waterHeadline } from "../../water-headline.ts";
import { NOT_COVERED, sentence } from "../../words.ts";
import { state } from "../state/store.ts";
import { makeFile } from "./bar.tsx";
import { JudgementIcon, plain } from "./judgement-icons.tsx";

/** The answer: the judgement with its reason, then heat, water, vapour layer and room surface, each with its own mark. */
export function AnswerPart({ result, section }: { result: BuildUpResult; section: SectionResult | null }) {
  const { judgement } = result;
  return (
    <section class={`answer ${CLASSES[judgement.word]}`} id="answer" tabIndex={-1} aria-labelledby="answer-word">
      <h2 id="answer-word">
        <JudgementIcon word={judgement.word} />
        {judgement.word}
      </h2>
      <p>{plain(judgement.message)}</p>
      {state().text === state().readable ? null : (
        <p class="old">This is the answer to the last text that could be read.</p>
      )}
      <dl>
        <Heat result={result} />
        <Water result={result} />
        <VapourLayer result={result} />
        <RoomSurface result={result} section={section} />
      </dl>
      <p class="quiet">{sentence(NOT_COVERED)}.</p>
      <p class="quiet">
        <button type="button" class="link" onClick={() => void makeFile("figures")}>
          All figures as JSON
        </button>
      </p>
    </section>
  );
}

function Row({
  name,
  mark,
  children,
}: {
  name: string;
  mark: JudgementWord | null;
  children: preact.ComponentChildren;
}) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        {mark === null ? null : <JudgementIcon word={mark} />}
        <span>{children}</span>
      </dd>
    </div>
  );
}

function Heat({ result: { heat, target } }: { result: BuildUpResult }) {
  if (heat === null) return null;
  const isMet = target === null ? null : meetsTarget(heat.transmittance, target);
  const words =
    isMet === null ? "" : isMet ? `, target ${fixed(target!, 2)} met` : `, target ${fixed(target!, 2)} missed`;
  return (
    <Row name="Heat" mark={isMet === null ? null : isMet ? "sound" : "change it"}>
      <strong>U {fixed(heat.transmittance, 2)}</strong> W/(m²·K){words}
    </Row>
  );
}

function Water({ result: { moisture } }: { result: BuildUpResult }) {
  if (moisture === null) return null;
  const { verdict, words } = waterHeadline(moisture);
  const mark = verdict === "dry" ? "sound" : verdict === "dries out" ? "sound with conditions" : "change it";
  return (
    <Row name="Water" mark={mark}>
      <strong>{verdict}</strong>: {words}
    </Row>
  );
}

function VapourLayer({ result: { vapourLayer, layers } }: { result: BuildUpResult }) {
  const kind = vapourLayerKind(vapourLayer);
  const names = (vapourLayer?.layers ?? []).map((index) => layers[index]?.name).join(" and ");
  if (kind === "vapour layer") {
    const margin = vapourLayer?.dewPointMargin;
    const spare =
      margin === null || margin === undefined
        ? ""
        : `, ${fixed(margin, 1)} K above the dew point at least (${vapourLayer?.dewPointMarginMonth})`;
    return (
      <Row name="Vapour layer" mark="sound">
        <strong>on the warm side</strong>: {names}
        {spare}
      </Row>
    );
  }
  if (kind === "on the cold side") {
    return (
      <Row name="Vapour layer" mark="change it">
        <strong>none on the warm side</strong>; tight on the cold side: {names}
      </Row>
    );
  }
  return (
    <Row name="Vapour layer" mark={null}>
      {kind === "none" ? <strong>none</strong> : "nothing drives vapour through"}
    </Row>
  );
}

function RoomSurface({ result: { heat }, section }: { result: BuildUpResult; section: SectionResult | null }) {
  if (heat === null) return null;
  const { temperatureFactor, requiredTemperatureFactor: required } = heat;
  const months = (section?.months ?? []).map(({ month, nodes }) => ({ month, temperature: nodes[0]!.temperature }));
  const coldest =
    months.length === 0 ? null : months.reduce((one, other) => (other.temperature < one.temperature ? other : one));
  const isWarm = required === null ? null : temperatureFactor >= required;
  const words = isWarm === null ? "" : isWarm ? ", too warm for mould" : ", cold enough for mould";
  return (
    <Row name="Room surface" mark={isWarm === null ? null : isWarm ? "sound" : "change it"}>
      {coldest === null ? null : (
        <>
          <strong>{fixed(coldest.temperature, 1)} °C</strong> in {coldest.month}
        </>
      )}
      {words}{" "}
      <small>
        (fRsi {fixed(temperatureFactor, 2)}
        {required === null ? ", none required" : `, ${fixed(required, 2)} required`})
      </small>
    </Row>
  );
}
