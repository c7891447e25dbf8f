// The steps of the saddle as a list, each group under what has to be true first.
import type { SaddleMoves } from "./saddle-moves";

interface MoveListProps {
  moves: SaddleMoves[];
  /** In columns, where a sheet of paper has room for them. */
  columns?: boolean;
}

export function MoveList({ moves, columns = false }: MoveListProps) {
  return (
    <>
      {moves.map(({ once, lines }) => (
        <div key={once}>
          {once !== null && <p class="once">{once}</p>}
          <ol class={columns ? "raises figure dates" : "raises figure"}>
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
        </div>
      ))}
    </>
  );
}
