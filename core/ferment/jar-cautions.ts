import { inBothSystems } from '#core/units/in-both-systems.ts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { alcoholLine_pctVol } from './alcohol.ts';
import { type Caution, caution, commonPractice } from './caution.ts';
import { comparedAt_C } from './equivalent-hours.ts';
import { ingredientCautions, mouldCautions } from './ingredient-cautions.ts';
import type { JarFigures } from './jar-figures.ts';
import type { JarInput } from './jar-input.ts';
import { pressureCautions } from './pressure-cautions.ts';
import type { ResolvedAddition } from './resolve-addition.ts';

/** Room for froth and rising fruit, as a share of the vessel. Common practice, no source. */
const frothRoom = 0.1;
const alcoholBasis = () =>
  phrase`US TTB, 27 CFR parts 16 and 25: ${0.5} % vol at any time, also after bottling; your country may differ`;

/** The cautions of one jar, the gravest first. */
export function jarCautions(input: JarInput, additions: readonly ResolvedAddition[], sheet: JarFigures): Caution[] {
  return [
    ...pressureCautions(input.vessel, sheet.carbonation?.gauge_bar ?? null),
    ...fillCautions(sheet),
    ...alcoholCautions(sheet),
    ...closingCautions(input, sheet),
    ...coldCautions(sheet),
    ...mouldCautions(input, additions),
    ...ingredientCautions(additions),
    caution(
      'ph-measure',
      phrase`How sour it gets cannot be worked out beforehand: measure the pH. Above ${4.6}, or rising, is a warning.`,
      phrase`21 CFR 114.3 (acid foods)`,
    ),
    caution(
      'live-drink',
      phrase`A live drink with a little alcohol: whoever avoids alcohol, is pregnant or has weak immunity should ask a clinician first.`,
      commonPractice(),
    ),
  ];
}

function fillCautions({ headspace_mL, fillFraction }: JarFigures): Caution[] {
  if (headspace_mL < 0) {
    const over = Math.ceil(-headspace_mL);
    return [
      caution(
        'overfull',
        phrase`${inBothSystems(over, 'volume')} more than the jar holds: it will run over. Pour in less base.`,
        phrase`Volume from composition (Choi and Okos 1986)`,
      ),
    ];
  }
  if (1 - fillFraction >= frothRoom - 1e-9) return [];
  return [
    caution(
      'headspace-froth',
      phrase`Little room left: froth and rising fruit may lift the lid or run over. Leave about a tenth of the jar.`,
      commonPractice(),
    ),
  ];
}

function alcoholCautions({ alcohol }: JarFigures): Caution[] {
  const most = alcohol.ifAllSugar_pctVol;
  const truth = phrase`It is a bound only as far as the base’s own sugar and alcohol are true.`;
  if (most === null) {
    return [
      caution(
        'alcohol-unknown',
        phrase`Not all of its sugar is known, so nobody can say how much alcohol it may reach. Tell whoever avoids it.`,
        alcoholBasis(),
      ),
    ];
  }
  if (most < alcoholLine_pctVol) {
    return [
      caution('alcohol-bound', phrase`All its sugar would make ${fixed(most, 2)} % vol. ${truth}`, alcoholBasis()),
    ];
  }
  return [
    caution(
      'alcohol-line',
      phrase`Could pass ${0.5} % vol: all its sugar would make ${fixed(most, 1)} % vol. ${truth} Chilling slows it, it does not stop it.`,
      alcoholBasis(),
    ),
  ];
}

function closingCautions(input: JarInput, { sugar }: JarFigures): Caution[] {
  const closing = input.sealedWithSugar_g_per_L;
  const total = sugar.total_g_per_L;
  if (closing === undefined || total === null || closing <= total * 1.05 + 1) return [];
  return [
    caution(
      'sugar-at-closing',
      phrase`${inBothSystems(closing, 'concentration')} at closing is more than the ${inBothSystems(total, 'concentration')} this jar starts with: one of the two is off.`,
      phrase`The sugar balance of this sheet`,
    ),
  ];
}

function coldCautions({ thaw }: JarFigures): Caution[] {
  if (thaw === null) return [];
  const { low, high } = thaw.lostEquivalentHours;
  return [
    caution(
      'cold-start',
      phrase`The frozen fruit costs about ${fixed(low, 1)} to ${fixed(high, 1)} h of a start at ${inBothSystems(comparedAt_C, 'temperature')}; anything slower than that is not temperature.`,
      phrase`Heat balance, Newton’s law, yeast’s temperature response (Salvadó et al. 2011)`,
    ),
  ];
}
