/**
 * Joins runs of whole jobs: prints their figures, writes `reports/jobs.html` and a job file of each of the worst cases.
 * Run: node scripts/bundled.mjs evaluate/jobs-page.ts reports/trials/one.jsonl [reports/trials/other.jsonl ...]
 */
import { basename } from "node:path";
import { reportJobs } from "./jobs-page-files.ts";
import { joined, readTrials } from "./trial-file.ts";

const paths = process.argv.slice(2);
if (paths.length === 0) throw new Error("name the files of trials, such as reports/trials/oracle-1-12.jsonl");
const trials = joined(paths.map(readTrials));
if (trials.length === 0) throw new Error(`there is no trial in ${paths.join(", ")}`);
reportJobs(trials, paths.map((path) => basename(path)).join(", "));
