// How to measure the inside leg, drawn and told.
import { MeasuringDrawing } from "../../drawings/measuring-drawing";
import { usePage } from "../../page/page-context";

export function MeasuringSteps() {
  const { texts } = usePage();
  return (
    <div class="measuring-steps stack">
      <MeasuringDrawing />
      <ol class="steps">
        {texts.measuring.steps.map((step, place) => (
          <li key={step} data-step={place + 1}>
            {step}
          </li>
        ))}
      </ol>
      <p class="soft">{texts.measuring.notTrousers}</p>
    </div>
  );
}
