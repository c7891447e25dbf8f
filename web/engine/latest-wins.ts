// Asking while somebody types: one question at a time, and of those that wait only the newest is asked.

/** Puts questions to `ask`, hands each answer that is still wanted to `deliver`. */
export function latestWins<Question, Answer>(
  ask: (question: Question) => Promise<Answer>,
  deliver: (answer: Answer, question: Question) => void,
): (question: Question) => void {
  let busy = false;
  let waiting: { question: Question } | null = null;

  async function work(question: Question): Promise<void> {
    busy = true;
    try {
      const answer = await ask(question);
      if (waiting === null) deliver(answer, question);
    } finally {
      busy = false;
    }
    const next: { question: Question } | null = waiting;
    waiting = null;
    if (next !== null) await work(next.question);
  }

  return (question) => {
    if (busy) waiting = { question };
    else void work(question);
  };
}
