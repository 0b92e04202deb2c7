import { homedir } from "node:os";
import { isAbsolute, join } from "node:path";

/** Where jobs are kept: `FAULTWRIGHT_DATA`, else the user's data folder by the XDG base directory rules. */
export function defaultDataDir(environment: NodeJS.ProcessEnv): string {
  const own = environment.FAULTWRIGHT_DATA;
  if (own !== undefined && own !== "") return own;
  const shared = environment.XDG_DATA_HOME;
  // The XDG rules say that a relative path here is to be ignored.
  const base = shared !== undefined && isAbsolute(shared) ? shared : join(homedir(), ".local", "share");
  return join(base, "faultwright");
}
