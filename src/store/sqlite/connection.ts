/** The few calls that the store makes of an SQL connection; a test puts one that fails in between. */
export type SqlValue = string | number | null | Uint8Array;
export type Row = Readonly<Record<string, SqlValue>>;

export interface SqlConnection {
  /** one or more statements without parameters */
  exec(sql: string): void;
  run(sql: string, values: readonly SqlValue[]): void;
  all(sql: string, values: readonly SqlValue[]): readonly Row[];
  close(): void;
}

/**
 * Runs `work` in one transaction that takes the write lock at once, so that what it read is still true when it commits.
 * Whatever is thrown inside undoes all of it.
 */
export function inTransaction<T>(connection: SqlConnection, work: () => T): T {
  try {
    connection.exec("BEGIN IMMEDIATE");
    const result = work();
    connection.exec("COMMIT");
    return result;
  } catch (error) {
    rollBack(connection);
    throw error;
  }
}

function rollBack(connection: SqlConnection): void {
  try {
    connection.exec("ROLLBACK");
  } catch {
    // BEGIN failed, SQLite has rolled back by itself (a full disk does that), or COMMIT went through and only its answer
    // was lost: either way there is no transaction left to undo, and the first error is the one to report.
  }
}
