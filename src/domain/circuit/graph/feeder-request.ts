/** A feeder as it stands: source, trunk, block, branches, amplifiers. */

