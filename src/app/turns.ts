/** One piece of work after the other. Where none is under way it begins at once. */
export class Turns {
  #last: Promise<void> = Promise.resolve();
  #underWay = 0;

  /** Done when the work is; rejects as it does. */
  take(work: () => Promise<void>): Promise<void> {
    this.#underWay += 1;
    const done = this.#underWay === 1 ? work() : this.#last.then(work);
    this.#last = done.finally(() => {
      this.#underWay -= 1;
    });
    return this.#last;
  }
}
