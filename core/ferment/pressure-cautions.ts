import { inBothSystems } from '#core/units/in-both-systems.ts';
import { phrase } from '#core/words/phrase.ts';
import { type Caution, caution, commonPractice } from './caution.ts';
import type { JarVessel } from './jar-input.ts';

/** From here EU law calls a wine sparkling, bar above the air's at 20 °C. */
export const sparklingLine_bar = 3;
/** The limit for carbonated soft drinks in glass, bar. */
export const glassLimit_bar = 4.7;

/**
 * The cautions of a vessel that closes.
 *
 * Method: a vessel without a rating is cautioned at any pressure; a rated one from its rating; both from 3 bar, glass again from 4.7 bar, at the
 * higher of the two temperatures.
 *
 * @param vessel its kind and rating
 * @param gauge_bar the most the sugar left can make, at the room's temperature and at 35 °C; `null` when it is not closed
 * Source: Regulation (EU) No 1308/2013, Annex VII Part II; British Glass TEC 7.
 */
export function pressureCautions(vessel: JarVessel, gauge_bar: { ambient: number; at35: number } | null): Caution[] {
  if (vessel.kind === 'open-jar') return [];
  const found: Caution[] = [];
  const most = gauge_bar === null ? null : Math.max(gauge_bar.ambient, gauge_bar.at35);
  const said = most === null ? '' : phrase` The sugar left could make up to ${inBothSystems(most, 'pressure')}.`;
  const rated = vessel.ratedGauge_bar;
  if (rated === undefined) {
    found.push(
      caution(
        'vessel-unrated',
        phrase`Nobody says what pressure this vessel is made for, and gas builds up in anything closed: it may burst, and glass flies.${said} Use a vessel with a rating, vent it, keep it cold.`,
        phrase`${commonPractice()}; glass made for pressure has design limits (BS 6119-1:1981, British Glass TEC 7), jars and fancy bottles mostly none`,
      ),
    );
  } else if (most !== null && most >= rated) {
    found.push(
      caution(
        'pressure-above-rating',
        phrase`Up to ${inBothSystems(most, 'pressure')} may build up; the vessel is made for ${inBothSystems(rated, 'pressure')}. Close it with less sugar left, or vent it.`,
        phrase`The maker’s rating, against the upper bound (Weiss 1974, all sugar fermented)`,
      ),
    );
  }
  if (most === null) return found;
  if (most >= sparklingLine_bar) {
    found.push(
      caution(
        'pressure-sparkling',
        phrase`Up to ${inBothSystems(most, 'pressure')}: from ${inBothSystems(sparklingLine_bar, 'pressure')} on it is the pressure of sparkling wine, whose bottles and corks are made for it.`,
        phrase`Regulation (EU) No 1308/2013, Annex VII Part II (sparkling from 3 bar at 20 °C)`,
      ),
    );
  }
  if (most >= glassLimit_bar && vessel.kind !== 'plastic') {
    found.push(
      caution(
        'pressure-glass-limit',
        phrase`Up to ${inBothSystems(most, 'pressure')}: glass for soft drinks is not recommended above ${inBothSystems(glassLimit_bar, 'pressure')}. Do not close it with this much sugar.`,
        phrase`British Glass, TEC 7`,
      ),
    );
  }
  return found;
}
