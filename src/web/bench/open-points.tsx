import type { Finding } from "../../wire/fit-view.ts";
import { forms, say } from "../say.ts";
import { listed } from "../words.ts";

/** What has to be fulfilled or looked up of a part before it may go in. */
export function OpenPoints({ findings }: { readonly findings: readonly Finding[] }) {
  const asked = findings.filter(({ says }) => says === "asks").map(({ words }) => say(words));
  const open = findings.filter(({ says }) => says === "open").map(({ rule }) => say(rule));
  const points = open.length === 0 ? asked : [...asked, say`look up: ${listed(open)}`];
  return <span className="aside">{forms().list(points)}</span>;
}
