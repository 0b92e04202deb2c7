/** What the page shows of what was learnt, and what it keeps of each closed job: shapes alone. */
export type { Linked } from "../job/bench-lessons.ts";
export type { Chained } from "../job/lesson-of-job.ts";
export type { JobFigures } from "../learning/job-figures.ts";
export type { LearntView } from "../learning/learnt-view.ts";
export type { Lesson } from "../learning/lesson.ts";
