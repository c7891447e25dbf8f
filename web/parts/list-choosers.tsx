// Ways to a list of bikes: a file on the device, or one of the invented samples inside the page.
import { pickedSource, pickers } from "../engine/file-source";
import { usePage } from "../page/page-context";
import type { ListState } from "../state/page-state";

export function ListChooser({ list }: { list: ListState }) {
  const { texts, openList, sourceOf } = usePage();
  const words = list.loaded === null ? texts.list.choose : texts.list.chooseOther;
  return (
    <label class="button main wide file-choice">
      <input
        type="file"
        onClick={(event) => {
          // Where the browser lets a page keep the file itself, the list can be saved back into it.
          if (pickers().showOpenFilePicker === undefined) return;
          event.preventDefault();
          const field = event.currentTarget;
          void pickedSource(sourceOf).then(
            (source) => source && openList(source),
            () => field.click(),
          );
        }}
        onChange={(event) => {
          const field = event.currentTarget;
          const file = field.files?.[0];
          if (file !== undefined) openList(sourceOf(file));
          // The same file can then be chosen once more, after it was mended.
          field.value = "";
        }}
      />
      {words}
    </label>
  );
}

/** `onChosen`: what else is to happen once a sample is on its way. */
export function SampleChooser({ onChosen }: { onChosen?: () => void }) {
  const { texts, openList, samples } = usePage();
  if (samples.length === 0) return null;
  return (
    <section class="stack" aria-label={texts.list.samples}>
      <h3>{texts.list.samples}</h3>
      <p class="soft">{texts.list.samplesWhy}</p>
      <div class="buttons">
        {samples.map((sample) => (
          <button
            key={sample.name}
            type="button"
            class="button"
            onClick={() => {
              openList(sample);
              onChosen?.();
            }}
          >
            {texts.list[sample.label]}
          </button>
        ))}
      </div>
    </section>
  );
}
