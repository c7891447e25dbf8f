// The standing cautions, with every result.
import { usePage } from "../page/page-context";

export function Cautions() {
  const { texts } = usePage();
  return (
    <aside class="cautions" aria-label={texts.cautions.title}>
      <h3>{texts.cautions.title}</h3>
      <ul>
        {texts.cautions.all.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </aside>
  );
}
