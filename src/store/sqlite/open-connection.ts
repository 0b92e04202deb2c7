import Database from "libsql";
import type { Row, SqlConnection, SqlValue } from "./connection.ts";

/** Another process (a second window's server) may hold the write lock for a moment: milliseconds to wait for it. */
const BUSY_MS = 5000;

/**
 * Opens (and makes, where missing) the database file. Every commit is on the disk before it returns (WAL with
 * synchronous=FULL: one fsync a commit), because a bench loses its mains plug more often than a data centre.
 */
export function openConnection(file: string): SqlConnection {
  const database = new Database(file, { timeout: BUSY_MS });
  for (const pragma of [
    `busy_timeout = ${BUSY_MS}`,
    "journal_mode = WAL",
    "synchronous = FULL",
    "foreign_keys = ON",
    // lets the triggers that refuse deletes see the delete inside an INSERT OR REPLACE
    "recursive_triggers = ON",
  ]) {
    database.exec(`PRAGMA ${pragma}`);
  }
  // Preparing costs more than running here; the store has a dozen statements, so the map stays small.
  const prepared = new Map<string, ReturnType<typeof database.prepare>>();
  const statement = (sql: string) => {
    const known = prepared.get(sql) ?? database.prepare(sql);
    prepared.set(sql, known);
    return known;
  };
  return {
    exec: (sql) => {
      database.exec(sql);
    },
    run: (sql, values) => {
      statement(sql).run(bindable(values));
    },
    all: (sql, values) => (statement(sql).all(bindable(values)) as Record<string, unknown>[]).map(plainRow),
    close: () => {
      prepared.clear();
      database.close();
    },
  };
}

/** libsql binds Buffers, not bare byte arrays. */
function bindable(values: readonly SqlValue[]): (string | number | null | Buffer)[] {
  return values.map((value) => (value instanceof Uint8Array ? Buffer.from(value) : value));
}

/** libsql hands a blob over as an ArrayBuffer or a Buffer, at times of another realm; the store sees bytes. */
function plainRow(row: Record<string, unknown>): Row {
  return Object.fromEntries(Object.entries(row).map(([column, value]) => [column, plainValue(value)]));
}

function plainValue(value: unknown): SqlValue {
  if (value === null || typeof value === "string" || typeof value === "number") return value;
  if (ArrayBuffer.isView(value)) return new Uint8Array(value.buffer, value.byteOffset, value.byteLength);
  return new Uint8Array(value as ArrayBuffer);
}
