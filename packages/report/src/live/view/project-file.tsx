import { state, write } from "../state/store.ts";

/** The file itself: what is changed above stands here at once, and what is typed here is drawn at once. */
export function ProjectFile({ isOpen }: { isOpen: boolean }) {
  const { text } = state();
  return (
    <details class="file" open={isOpen || undefined}>
      <summary>The project file</summary>
      <textarea
        id="file-text"
        spellcheck={false}
        autocomplete="off"
        aria-label="The project file, as it is saved"
        rows={Math.min(MOST_LINES, text.split("\n", MOST_LINES).length + 1)}
        value={text}
        onInput={({ currentTarget }) => write(currentTarget.value, "typing in the file")}
      />
    </details>
  );
}

const MOST_LINES = 36;
