import type { Data } from "../edit/parsed.ts";

/** A material that is in no table: its values as the datasheet gives them. */
export function OwnValues({ choose }: { choose: (layer: Data) => void }) {
  return (
    <details class="own">
      <summary>Values from a datasheet</summary>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const layer = layerFrom(new FormData(event.currentTarget));
          if (layer !== null) choose(layer);
        }}
      >
        <label>
          Name <input name="name" required autocomplete="off" />
        </label>
        <fieldset>
          <legend>A board, slab or block</legend>
          <label>
            Conductivity λ, W/(m·K) <input name="conductivity" type="number" min="0.005" max="400" step="any" />
          </label>
          <label>
            Vapour resistance factor μ <input name="factor" type="number" min="1" max="1000000" step="any" />
          </label>
          <label>
            Thickness, mm <input name="thickness" type="number" min="0.1" max="5000" step="any" />
          </label>
        </fieldset>
        <label>
          What it is made of{" "}
          <select name="kind">
            <option value="">not said</option>
            {KINDS.map((kind) => (
              <option key={kind}>{kind}</option>
            ))}
          </select>
        </label>
        <fieldset>
          <legend>Or a sheet</legend>
          <label>
            sd, m <input name="sd" type="number" min="0.001" max="10000" step="any" />
          </label>
        </fieldset>
        <button type="submit">Use these values</button>
      </form>
    </details>
  );
}

/** The layer that the form describes; null while neither a board nor a sheet is whole. */
function layerFrom(form: FormData): Data | null {
  const text = (name: string): string => String(form.get(name) ?? "").trim();
  const name = text("name");
  const kind: Record<string, string> = text("kind") === "" ? {} : { kind: text("kind") };
  if (text("sd") !== "") return { material: { name, sd: `${text("sd")} m`, ...kind } };
  if (["conductivity", "factor", "thickness"].some((key) => text(key) === "")) return null;
  return {
    material: {
      name,
      conductivity: `${text("conductivity")} W/(m K)`,
      "vapour resistance factor": Number(text("factor")),
      ...kind,
    },
    thickness: `${text("thickness")} mm`,
  };
}

const KINDS = ["wood", "board", "mineral", "metal", "plastic", "paper"];
