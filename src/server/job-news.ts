/** Tells whoever listens what was added to which job. */
import type { LogNews } from "../wire/stream-api.ts";

export class JobNews {
  readonly #listeners = new Set<(news: LogNews) => void>();

  tell(news: LogNews): void {
    for (const listener of this.#listeners) listener(news);
  }

  /** The returned function ends it. */
  listen(listener: (news: LogNews) => void): () => void {
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  }
}
