// The lists that are open: which one is in hand, and what would be lost with each.
import { useEffect, useRef } from "preact/hooks";
import { usePage } from "../../page/page-context";
import { isUnsaved } from "../../state/list-desk";
import type { DeskState, OpenList } from "../../state/list-desk";
import { closingAsked, viewed } from "../../state/list-steps";
import type { Texts } from "../../texts/texts";

export function listName(texts: Texts, { title, file }: OpenList): string {
  return title ?? file ?? texts.list.untitled;
}

export function OpenLists({ desk }: { desk: DeskState }) {
  const { texts, change, work } = usePage();
  const { open, inHand, closing } = desk;
  if (open.length < 2) return <Closing desk={desk} />;
  return (
    <>
      <ul class="open-lists" aria-label={texts.desk.lists}>
        {open.map((list) => (
          <li key={list.key}>
            <button
              type="button"
              {...(list.key === inHand ? { "aria-current": "true" as const } : {})}
              onClick={() => {
                if (list.key !== inHand) void work.take(list.key);
              }}
            >
              <strong>{listName(texts, list)}</strong>
              <span>
                {texts.list.bikes({ number: list.bikes })}
                {isUnsaved(list) && <em class="tag">{texts.desk.unsaved}</em>}
              </span>
            </button>
            <button
              type="button"
              class="plain-link"
              aria-label={texts.desk.close({ name: listName(texts, list) })}
              onClick={() => {
                if (isUnsaved(list)) change(closingAsked(list.key));
                else void work.close(list.key);
              }}
            >
              {texts.desk.closeShort}
            </button>
          </li>
        ))}
      </ul>
      {closing !== null && <Closing desk={desk} />}
    </>
  );
}

/** Asked before unsaved changes are given up. */
function Closing({ desk }: { desk: DeskState }) {
  const { texts, change, work } = usePage();
  const { closing } = desk;
  const stay = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (closing !== null) stay.current?.focus();
  }, [closing]);
  const list = desk.open.find(({ key }) => key === closing);
  if (list === undefined) return null;
  return (
    <section class="sheet stack refused" role="alert">
      <p>{texts.desk.closing({ name: listName(texts, list) })}</p>
      <div class="buttons">
        <button
          type="button"
          class="button main"
          onClick={() => {
            change(closingAsked(null));
            const inHand = list.key === desk.inHand ? Promise.resolve() : work.take(list.key);
            void inHand.then(() => change(viewed("save")));
          }}
        >
          {texts.desk.save}
        </button>
        <button ref={stay} type="button" class="button" onClick={() => change(closingAsked(null))}>
          {texts.desk.keepOpen}
        </button>
        <button type="button" class="button" onClick={() => void work.close(list.key)}>
          {texts.desk.closeAnyway}
        </button>
      </div>
    </section>
  );
}
