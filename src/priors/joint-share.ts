/**
 * Share of the opens of a part that are a cracked joint, which resoldering closes (from memory): the diagnosis believes it and
 * the practice bench behaves so.
 */
export const JOINT_SHARE = 0.4;
