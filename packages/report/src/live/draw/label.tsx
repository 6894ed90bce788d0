/** A text of the drawing, on paper of its own so that it reads over a hatch. */
export interface LabelProps {
  x: number;
  y: number;
  text: string;
  anchor?: "start" | "middle" | "end";
  /** Name of a style: which line it belongs to, how large it is. */
  kind?: string;
  /** Turned to read upwards. */
  isUpright?: boolean;
}

export function Label({ x, y, text, anchor = "start", kind = "", isUpright = false }: LabelProps) {
  const place = isUpright ? { transform: `translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(-90)` } : { x, y };
  return (
    <text {...place} text-anchor={anchor} class={`label ${kind}`}>
      {text}
    </text>
  );
}

/** About how wide a text is at 13 px [px]. */
export function widthOf(text: string): number {
  return text.length * 6.9;
}
