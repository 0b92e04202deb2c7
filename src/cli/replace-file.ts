/** Writing a file so that nobody ever finds half of it. */
import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";

/** Puts `content` in the place of a file: whoever reads meanwhile, or after a power cut, finds the old or the new, whole. One that is not there yet is made. */
export function replaceFile(path: string, content: string | Uint8Array): void {
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.new`);
  try {
    writeFileSync(beside, content, {
      mode: existsSync(path) ? statSync(path).mode & 0o777 : 0o666,
      flush: true,
    });
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
  syncFolder(dirname(path));
}

/** The new name is on the disk only once its folder is. Windows cannot open a folder, and does this by itself. */
function syncFolder(folder: string): void {
  if (process.platform === "win32") return;
  const handle = openSync(folder, "r");
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
