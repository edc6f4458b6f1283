import type { Rule } from '@evenbore/contract'
import { PSI } from '../units/pressure.ts'

/** Where each rule comes from. */
export const RULE_BASIS: Readonly<Record<Rule, string>> = {
  'own-spread-percent': "the maker's own limit for this engine",
  'own-spread-pressure': "the maker's own limit for this engine",
  'one-tenth': 'common practice, no source',
  'three-quarters': 'US Army TM 5-4210-230-14&P-1, addendum 2: lowest at least 75 percent of the highest',
  'fifth-below-mean': 'TM 1-1500-204-23-1 (aircraft): more than 20 percent below the average of all cylinders',
  'ten-psi': 'TM 10-3930-618-20 par. 2-12 (petrol): at most 10 psi between cylinders',
  'own-minimum': "the maker's own limit for this engine",
  'own-maximum': "the maker's own limit for this engine",
}

/** Spread allowed, as a part of the highest reading. */
export const ONE_TENTH = 0.1
export const ONE_QUARTER = 0.25
/** A cylinder may lie this part below the mean of all. */
export const ONE_FIFTH = 0.2
/** Spread allowed between cylinders of a petrol engine, Pa. */
export const TEN_PSI_PA = 10 * PSI

/** Probability from which a verdict is given at all: JCGM 106:2012 leaves the choice; .95 and .05 are the project's. */
export const INSIDE_FROM = 0.95
export const OUTSIDE_TO = 0.05
