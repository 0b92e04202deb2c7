/** For tests: a connection whose n-th statement fails, before it is done or after, when only its answer is lost. */
import type { SqlConnection } from "./connection.ts";

export interface FailingConnection extends SqlConnection {
  /** fail at the n-th statement from now, counted from 1; null: no more failures */
  failAt(statement: number | null, when: "before" | "after"): void;
  /** whether the failure that was asked for has happened */
  hasFailed(): boolean;
}

export function failingConnection(inner: SqlConnection): FailingConnection {
  let left: number | null = null;
  let moment: "before" | "after" = "before";
  let failed = false;
  const step = <T>(work: () => T): T => {
    const now = left !== null && --left === 0;
    if (!now) return work();
    failed = true;
    if (moment === "after") work();
    throw new Error("disk I/O error (injected)");
  };
  return {
    exec: (sql) => step(() => inner.exec(sql)),
    run: (sql, values) => step(() => inner.run(sql, values)),
    all: (sql, values) => step(() => inner.all(sql, values)),
    close: () => inner.close(),
    failAt: (statement, when) => {
      left = statement;
      moment = when;
      failed = false;
    },
    hasFailed: () => failed,
  };
}
