import type { Steps } from './steps.js';

/** Of answers to questions that are no objects so many are kept for each kind of work; the oldest goes first. */
const MOST_ANSWERS = 512;

/**
 * Results that are worked out of something at the first asking, and kept as long as whoever owns this store, or as long as
 * what they are of. The work must give the same of the same, so that nobody can tell whether it was done before. Nothing else
 * in the core remembers.
 */
export class Derived {
  readonly #made = new WeakMap<object, WeakMap<object, unknown>>();
  readonly #answers = new WeakMap<object, Map<string, unknown>>();

  /** What the work makes of `of`. */
  get<T extends object, R extends object | string | null>(work: (of: T) => R, of: T): R {
    let made = this.#made.get(work);
    if (made === undefined) {
      made = new WeakMap();
      this.#made.set(work, made);
    }
    const known = made.get(of) as R | undefined;
    if (known !== undefined) return known;
    const result = work(of);
    made.set(of, result);
    return result;
  }

  /**
   * What the work makes of `of`, as it did before of another that is equal in all that matters.
   * @param question holds all of that; equal for equals
   */
  answer<T, R>(work: (of: T) => R, of: T, question: string): R {
    const answers = this.#answersOf(work);
    if (!answers.has(question)) keep(answers, question, work(of));
    return answers.get(question) as R;
  }

  /** The same where the work is done a step at a time. */
  *answerInSteps<T, R>(work: (of: T) => Steps<R>, of: T, question: string): Steps<R> {
    const answers = this.#answersOf(work);
    if (answers.has(question)) return answers.get(question) as R;
    const answer = yield* work(of);
    keep(answers, question, answer);
    return answer;
  }

  #answersOf(work: object): Map<string, unknown> {
    const answers = this.#answers.get(work) ?? new Map<string, unknown>();
    this.#answers.set(work, answers);
    return answers;
  }
}

function keep(answers: Map<string, unknown>, question: string, answer: unknown): void {
  answers.set(question, answer);
  if (answers.size > MOST_ANSWERS) answers.delete(answers.keys().next().value!);
}
