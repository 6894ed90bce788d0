import { isJson } from "./parsed.ts";
import type { Entry } from "./rearrange.ts";
import { lineBreakOf } from "./set-value.ts";
import { written } from "./written.ts";

interface Extent {
  from: number;
  to: number;
}

/** An entry with what belongs to it: comments on lines of their own above it, and one behind it on its line. */
interface Piece {
  above: string[];
  source: string;
  behind: string;
}

/**
 * A list in brackets, rearranged. Text between entries is divided: comments move with their entry, blanks and line
 * breaks stay in place, so that the reverse edit gives the same bytes.
 */
export function rearrangeBrackets(
  text: string,
  list: Extent,
  extents: readonly Extent[],
  entries: readonly Entry[],
): string | null {
  const edges = [list.from + 1, ...extents.flatMap(({ from, to }) => [from, to]), list.to - 1];
  const between = Array.from({ length: edges.length / 2 }, (_, index) =>
    text.slice(edges[2 * index], edges[2 * index + 1]),
  );
  const parts = between.map((trivia, index) => takeApart(trivia, index === 0));
  if (extents.length === 0) {
    const made = entries.map((entry) => written(entry, isJson(text))).join(", ");
    return text.slice(0, list.from) + (made === "" ? "[]" : `[ ${made} ]`) + text.slice(list.to);
  }
  const pieces = extents.map(({ from, to }, index): Piece => {
    const own = index + 1 < extents.length || parts[index + 1]!.hasComma;
    return {
      above: parts[index]!.comments,
      source: text.slice(from, to),
      behind: own || index + 1 === extents.length ? parts[index + 1]!.behind : "",
    };
  });
  const closing = parts.at(-1)!;
  const gaps = parts.slice(0, -1).map(({ gap }) => gap);
  const usual = gaps[1] ?? " ";
  const indent =
    lineBreakOf(text) +
    (/\n([ \t]*)$/.exec(gaps.find((gap) => gap.includes("\n")) ?? "")?.[1] ?? indentAt(text, list.from));
  const ordered = entries.map(
    (entry): Piece =>
      typeof entry === "number" ? pieces[entry]! : { above: [], source: written(entry, isJson(text)), behind: "" },
  );
  let made = "";
  let open = false;
  ordered.forEach(({ above, source, behind }, index) => {
    const gap = gaps[index] ?? usual;
    const needsLine = open || above.length > 0;
    const lead = needsLine && !gap.includes("\n") ? indent : gap;
    made += lead + above.map((comment) => comment + indent).join("") + source;
    made += index + 1 < ordered.length || closing.hasComma ? "," : "";
    made += behind;
    open = behind !== "";
  });
  const last = closing.comments.length > 0 ? indent + closing.comments.join(indent) : "";
  const end = (open || last !== "") && !closing.gap.includes("\n") ? indent : closing.gap;
  const inside = ordered.length === 0 ? "" : made + last + end;
  return `${text.slice(0, list.from)}[${inside}]${text.slice(list.to)}`;
}

/**
 * What stands between two entries: the comment behind the first on its line, with the blanks before it; comments on
 * lines of their own; blanks and line breaks.
 */
function takeApart(
  trivia: string,
  isFirst: boolean,
): { hasComma: boolean; behind: string; comments: string[]; gap: string } {
  let hasComma = false;
  let behind = "";
  const comments: string[] = [];
  let gap = "";
  let isSameLine = !isFirst;
  for (const [token] of trivia.matchAll(/,|#[^\r\n]*|\r?\n[ \t]*|[^\S\r\n]+/g)) {
    if (token === ",") hasComma = true;
    else if (token.startsWith("#")) {
      if (isSameLine) {
        behind = gap + token;
        gap = "";
      } else {
        comments.push(token);
        gap = "";
      }
    } else if (token.includes("\n")) {
      isSameLine = false;
      gap = comments.length > 0 || gap.includes("\n") ? (gap.includes("\n") ? gap : "") + token : token;
    } else gap += token;
  }
  return { hasComma, behind, comments, gap };
}

function indentAt(text: string, offset: number): string {
  const lineStart = text.lastIndexOf("\n", offset - 1) + 1;
  return `${/^[ \t]*/.exec(text.slice(lineStart, offset))![0]}  `;
}
