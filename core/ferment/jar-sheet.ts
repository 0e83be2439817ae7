import { OutOfDomain } from '#core/out-of-domain.ts';
import type { Reason } from '#core/reason.ts';
import { celsius, gramsPerLitre, type Millilitres, millilitres } from '#core/units/branded.ts';
import { phrase } from '#core/words/phrase.ts';
import { closedPressure } from './carbon-dioxide.ts';
import type { Caution } from './caution.ts';
import { coldStart } from './cold-start.ts';
import { jarCautions } from './jar-cautions.ts';
import type { JarFigures } from './jar-figures.ts';
import type { JarInput } from './jar-input.ts';
import { jarProblem } from './jar-problem.ts';
import { jarSugar } from './jar-sugar.ts';
import { jarVolume_mL } from './jar-volume.ts';
import { type ResolvedAddition, resolveAddition } from './resolve-addition.ts';

/** The warm day that a closed vessel has to stand, °C. */
const warmDay_C = celsius(35);

/** What a jar will hold and may become, with the cautions that go with it. `null` is what cannot be known; `reasons` says why. */
export interface JarSheet extends JarFigures {
  readonly cautions: readonly Caution[];
}

/**
 * The sheet of one jar: volume and headspace, sugar, what alcohol and pressure it could reach, the cold start, the cautions.
 *
 * Method: Choi–Okos volumes at 20 °C; sugars from the food table per litre of contents; °Bx and SG as if all dissolved sugar were sucrose;
 * alcohol by Gay-Lussac and by Balling's yield, on top of the base's own; when closed, `closedPressure`; when something is frozen,
 * `coldStart`. Neither alcohol is a forecast: bacteria and acid take their share; the bound is as true as the base's own figures.
 *
 * @param input a jar without a problem (`jarProblem` returns null)
 * @param timeConstant_h how fast this very jar warms, from `ownWarming`; absent: as in still air
 * @throws OutOfDomain, with the sentence of the problem, when it has one
 * Accuracy: volume 1 %; sugar that of the food table (a real fruit ±20 %).
 * Source: USDA SR28; Choi and Okos (1986); ICUMSA SPS-4; Weiss (1974); Balling.
 * @example jarSheet({ vessel: { kind: 'lidded-jar', capacity_mL: 1000 }, base, additions: [], ambient_C: 22 }).fillFraction
 */
export function jarSheet(input: JarInput, timeConstant_h?: number): JarSheet {
  const problem = jarProblem(input);
  if (problem) throw new OutOfDomain(problem.path.join('.'), problem.code, problem.message);
  const additions = input.additions
    .map((one) => resolveAddition(one, input.ambient_C))
    .filter((one): one is ResolvedAddition => one !== null);
  const volume_mL = jarVolume_mL(input.base.volume_mL, additions);
  const headspace_mL = input.vessel.capacity_mL - volume_mL;
  const reasons: Reason[] = [];
  const { sugar, alcohol } = jarSugar(input, additions, volume_mL, reasons);
  const carbonation = carbonationOf(input, volume_mL, headspace_mL, reasons);
  const thaw = additions.some((one) => one.state === 'frozen' && one.mass_g > 0)
    ? coldStart(input, additions, volume_mL, timeConstant_h)
    : null;
  const sheet: JarFigures = {
    volume_mL,
    fillFraction: volume_mL / input.vessel.capacity_mL,
    headspace_mL,
    sugar,
    alcohol,
    carbonation,
    thaw,
    reasons,
  };
  return { ...sheet, cautions: jarCautions(input, additions, sheet) };
}

function carbonationOf(
  input: JarInput,
  contents_mL: Millilitres,
  headspace_mL: number,
  reasons: Reason[],
): JarFigures['carbonation'] {
  const sugar_g_per_L = input.sealedWithSugar_g_per_L;
  if (sugar_g_per_L === undefined) return null;
  const path = ['carbonation'];
  if (input.vessel.kind === 'open-jar') {
    reasons.push({ path, code: 'vessel-open', needs: phrase`A vessel that closes: an open jar keeps no gas.` });
    return null;
  }
  if (headspace_mL < 0) {
    reasons.push({
      path,
      code: 'jar-overfull',
      needs: phrase`Contents that fit the vessel with room left above them.`,
    });
    return null;
  }
  if (input.vessel.ratedGauge_bar === undefined) {
    reasons.push({
      path,
      code: 'vessel-unrated',
      needs: phrase`The pressure the vessel is made for, to hold the bound against.`,
    });
  }
  const ambient_C = celsius(input.ambient_C);
  const vessel = {
    contents_mL,
    headspace_mL: millilitres(headspace_mL),
    sugar_g_per_L: gramsPerLitre(sugar_g_per_L),
    closing_C: ambient_C,
  };
  const ambient = closedPressure(vessel, ambient_C);
  const at35 = closedPressure(vessel, warmDay_C).gauge_bar;
  return { volumes: ambient.volumes, gauge_bar: { ambient: ambient.gauge_bar, at35 } };
}
