// The bike from the side, and what was assumed to draw it.
import { SideView } from "../../drawings/side-view";
import type { SideViewAnswer } from "../../engine/wire-answers";
import { usePage } from "../../page/page-context";

export function BikeDrawing({ view }: { view: SideViewAnswer }) {
  const { texts, figures } = usePage();
  const { setting } = view.saddle;
  const assumed = view.assumed.map((what) => texts.bike.assumedNames[what] ?? what);
  return (
    <section class="sheet stack">
      <h3>{texts.bike.drawingTitle}</h3>
      <SideView
        view={view}
        label={texts.bike.drawing(
          setting === null ? null : figures.length(setting.y),
          figures.length(view.inseam_mm),
        )}
      />
      {view.foot !== null && setting !== null && <p>{texts.bike.foot[view.foot]}</p>}
      <p class="soft">
        {assumed.length > 0 && `${texts.bike.assumed(assumed)} `}
        {texts.bike.assumedRest}
      </p>
    </section>
  );
}
