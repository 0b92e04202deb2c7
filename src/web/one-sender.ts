import { Away, Refused } from "./api.ts";

/** Sends what waits, one sender at a time, and says what the bench computer refused; null where all went, or it is away and the rest waits on. */
export function oneSender(sendAll: () => Promise<void>): () => Promise<string | null> {
  const attempt = async (): Promise<string | null> => {
    try {
      await sendAll();
      return null;
    } catch (problem) {
      if (problem instanceof Refused) return problem.message;
      if (problem instanceof Away) return null;
      throw problem;
    }
  };
  let sending: Promise<string | null> = Promise.resolve(null);
  return () => {
    sending = sending.then(attempt, attempt);
    return sending;
  };
}
