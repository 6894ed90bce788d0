import type { Data } from "../edit/parsed.ts";
import { type Choice, shelvesFor } from "../goods/choices.ts";
import { exchangeLayer, putInLayer } from "../state/gestures.ts";
import { show, state } from "../state/store.ts";
import { OwnValues } from "./own-values.tsx";

let query = "";

/** What a layer is to be: ordinary goods first, the whole table below, and values from a datasheet. */
export function Picker() {
  const { picking } = state();
  const choose = (layer: Data): void => {
    if (picking === null) return;
    query = "";
    if (picking.isExchange) exchangeLayer(picking.at, layer);
    else putInLayer(picking.at, layer);
  };
  const close = (): void => {
    query = "";
    show({ picking: null });
  };
  return (
    <dialog class="picker" aria-labelledby="picker-head" ref={(dialog) => openAsAsked(dialog)} onClose={close}>
      {picking === null ? null : (
        <>
          <div class="picker-head">
            <h2 id="picker-head">
              {picking.isExchange ? `Layer ${picking.at + 1} becomes` : `New layer ${picking.at + 1}`}
            </h2>
            <button type="button" onClick={close}>
              Close
            </button>
            <label>
              Search{" "}
              <input
                type="search"
                value={query}
                placeholder="wool, board, sheet …"
                onInput={({ currentTarget }) => {
                  query = currentTarget.value;
                  show({});
                }}
              />
            </label>
          </div>
          <div class="shelves">
            <OwnValues choose={choose} />
            {shelvesFor(query).map(({ name, choices }) => (
              <Shelf key={name} name={name} choices={choices} choose={choose} />
            ))}
          </div>
        </>
      )}
    </dialog>
  );
}

function Shelf({ name, choices, choose }: { name: string; choices: readonly Choice[]; choose: (layer: Data) => void }) {
  return (
    <section>
      <h3>{name}</h3>
      <ul>
        {choices.map(({ words, fact, layer }) => (
          <li key={words}>
            <button type="button" onClick={() => choose(layer)}>
              {words} <small>{fact}</small>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function openAsAsked(dialog: HTMLDialogElement | null): void {
  if (dialog === null) return;
  const isWanted = state().picking !== null;
  if (isWanted && !dialog.open) dialog.showModal();
  if (!isWanted && dialog.open) dialog.close();
}
