/** The reasons that are one tap, for the page. */
export { OVERRULE_REASONS } from "../bench/overrule-reasons.ts";
