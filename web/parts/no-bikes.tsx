// Said where a plan has no bikes to work with, with the way to some.
import { usePage } from "../page/page-context";
import { went } from "../state/screen-changes";

export function NoBikes() {
  const { texts, change } = usePage();
  return (
    <section class="sheet stack">
      <p>{texts.club.noBikes}</p>
      <button type="button" class="button wide" onClick={() => change(went({ name: "list" }))}>
        {texts.list.title}
      </button>
    </section>
  );
}
