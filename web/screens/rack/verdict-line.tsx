// A verdict in words: what is in the way, and where the saddle goes.
import type { JudgedBike } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { cautionWords, settingWords } from "./verdict-words";

export function VerdictLine({ bike }: { bike: JudgedBike }) {
  const { texts, figures } = usePage();
  const caution = cautionWords(texts, figures, bike);
  const setting = settingWords(texts, figures, bike);
  return (
    <p>
      {caution !== null && `${caution} `}
      {setting !== null && (
        <>
          <strong>{setting.height}</strong>
          {setting.place === null ? "." : `${texts.colon}${setting.place}.`}
        </>
      )}
    </p>
  );
}
