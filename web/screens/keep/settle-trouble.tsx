// What can be done where something is in the way of keeping on the device.
import type { KeepingState } from "../../keeping/keeping-state";
import { waitsForWord } from "../../keeping/keeping-state";
import { usePage } from "../../page/page-context";

export function SettleTrouble({ keeping: { trouble, said } }: { keeping: KeepingState }) {
  const { texts, keeper } = usePage();
  return (
    <div role="alert" class="stack">
      {trouble !== null && (
        <p class="problem at-once">
          {texts.keep.troubles[trouble]} {said?.what === "mended" && <LeftOut lost={said.lost} />}
        </p>
      )}
      {trouble === "left" && said?.what === "saved" && (
        <button type="button" class="button wide" onClick={() => keeper.keepOnDevice(false)}>
          {texts.keep.deleteLeft}
        </button>
      )}
      {waitsForWord(trouble) && (
        <div class="buttons">
          {trouble === "elsewhere" && (
            <button type="button" class="button" onClick={() => keeper.settle("device")}>
              {texts.keep.stayDevice}
            </button>
          )}
          <button type="button" class="button" onClick={() => keeper.settle("here")}>
            {texts.keep.stayHere}
          </button>
        </div>
      )}
    </div>
  );
}

const mostNamed = 5;

/** What could not be read, by its places. */
export function LeftOut({ lost }: { lost: string[] }) {
  const { texts } = usePage();
  const named = lost.slice(0, mostNamed).join(", ") + (lost.length > mostNamed ? " …" : "");
  return lost.length === 0 ? null : <>{texts.keep.leftOut({ where: named })} </>;
}
