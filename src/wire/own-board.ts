/** What the page says of boards of one's own beside describing them: shapes alone. */
export type { ReferenceChange } from "../job/reference-change.ts";
export type { MappedPins, TraceAnswers, TracedFile } from "../traced/trace-file.ts";
