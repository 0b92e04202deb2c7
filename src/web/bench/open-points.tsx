import type { Finding } from "../../wire/fit-view.ts";

/** What has to be fulfilled or looked up of a part before it may go in. */
export function OpenPoints({ findings }: { readonly findings: readonly Finding[] }) {
  const asked = findings.filter(({ says }) => says === "asks").map(({ words }) => words);
  const open = findings.filter(({ says }) => says === "open").map(({ rule }) => rule);
  return (
    <span className="aside">
      {asked.join("; ")}
      {open.length > 0 && `${asked.length > 0 ? "; " : ""}look up: ${open.join(", ")}`}
    </span>
  );
}
