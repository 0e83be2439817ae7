import type { JarInput } from '#core/ferment/jar-input.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';

// Ten thousand jar sheets against the same arithmetic done bare: the formulas written out in one loop on plain numbers, without
// looking up names, checking input, giving reasons or wording cautions. The ratio is what the comfort costs.

const jars = 10_000;
const rounds = 7;

function jar(place: number): JarInput {
  return {
    vessel: { kind: 'swing-top', capacity_mL: 1000, ratedGauge_bar: 6 },
    base: { volume_mL: 780 + (place % 40), temperature_C: 21, sugar_g_per_L: 30 + (place % 11), alcohol_pctVol: 0.3 },
    additions: [{ ingredient: 'strawberries, frozen', mass_g: 50 + (place % 60), state: 'frozen' }],
    ambient_C: 22,
    sealedWithSugar_g_per_L: 5 + (place % 4),
  };
}

function water(t: number): number {
  return (
    (999.83952 + t * (16.952577 + t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 - t * 281.03006e-12))))) /
    (1 + 16.887236e-3 * t)
  );
}
function solution(w: number): number {
  return water(20) + w * (385.1761 + w * (135.3705 + w * (40.9299 + w * (-3.9643 + w * (13.4853 - w * 17.289)))));
}
function strength(sugar_g_per_L: number): number {
  let w = sugar_g_per_L / 1000;
  for (let step = 0; step < 12; step += 1) w = sugar_g_per_L / solution(w);
  return w;
}
function solubility(t: number): number {
  const hundredth = (t + 273.15) / 100;
  return Math.exp(-58.0931 + 90.5069 / hundredth + 22.294 * Math.log(hundredth));
}
function liquid(t: number, dry: number): number {
  const wet = t < 0 ? 4.2194 * t : t * (4.2194 + t * (-1.7036e-3 + t * (3.948e-5 + t * (-5.429e-7 + t * 3.575e-9))));
  return (1 - dry) * wet + dry * t * (1.5488 + t * (9.8e-4 - t * 1.98e-6));
}
function fruit(t: number): number {
  const ice = t < -0.8 ? 0.898 * (1 - -0.8 / t) : 0;
  return liquid(t, 0.1) + ice * (-333.43 + 2.0967 * t + 0.003675 * t * t - 4.2194 * t);
}
function rate(T: number, low: number): number {
  if (T <= low || T >= 45.4) return 0;
  const rise = 32.3 - low;
  return ((T - 45.4) * (T - low) ** 2) / (rise * (rise * (T - 32.3) - (32.3 - 45.4) * (32.3 + low - 2 * T)));
}

/** One jar, bare: volume, sugar, strength, alcohol twice, pressure twice, cold start. */
function bare({ base, additions, vessel, ambient_C, sealedWithSugar_g_per_L = 0 }: JarInput): number {
  const mass = additions[0]?.mass_g ?? 0;
  const volume =
    base.volume_mL +
    mass * 10 * (89.97 / 995.74 + 0.43 / 1319.53 + 0.11 / 917.24 + 0.37 / 2418.19 + 2.1 / 1304.18 + 7.02 / 1592.89);
  const baseSugar = base.sugar_g_per_L ?? 0;
  const sugar = (baseSugar * base.volume_mL) / 1000 + mass * 0.0456;
  const w = strength((1000 * sugar) / volume);
  const sg = solution(w) / solution(0);
  const alcohol = (sugar * 0.53835 - mass * 0.0419 * 0.02692 + sugar * 0.48391) / volume;
  const head = (vessel.capacity_mL - volume) / 1000;
  const litres = volume / 1000;
  const gas = (t: number) => solubility(t) * litres + head / (0.082057366 * (t + 273.15));
  const held = gas(ambient_C) + (4 * sealedWithSugar_g_per_L * litres) / 342.297;
  const pressure = held / gas(ambient_C) + held / gas(35);
  const baseDry = strength(baseSugar);
  const baseMass = (base.volume_mL * solution(baseDry)) / 1000;
  const heat = (t: number) => baseMass * liquid(t, baseDry) + mass * fruit(t);
  const total = baseMass * liquid(base.temperature_C, baseDry) + mass * fruit(-18);
  let low = -18;
  let high = base.temperature_C;
  while (high - low > 1e-7) {
    const middle = (low + high) / 2;
    if (heat(middle) < total) low = middle;
    else high = middle;
  }
  const gap = ambient_C - low;
  const width = Math.cbrt((4 * vessel.capacity_mL) / (Math.PI * 1.5));
  const end = (Math.PI * width * width) / 4;
  const conductance = (8 * (2 * end + (Math.PI * width * volume) / end)) / 1e4;
  const tau = (heat(ambient_C) - heat(low)) / gap / 1000 / (3.6 * conductance);
  let lost = tau * Math.log(gap);
  for (const minimum of [1.3, 2.8, 4.3]) {
    const room = rate(ambient_C, minimum);
    for (let step = 0; step < 24; step += 1) {
      lost += (tau * (room - rate(ambient_C - (gap * (step + 0.5)) / 24, minimum))) / (step + 0.5) / rate(22, minimum);
    }
  }
  return volume + sg + alcohol + pressure + low + lost;
}

function fastest_ms(work: (input: JarInput) => number, inputs: readonly JarInput[]): number {
  let best = Number.POSITIVE_INFINITY;
  let kept = 0;
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now();
    for (const input of inputs) kept += work(input);
    best = Math.min(best, performance.now() - start);
  }
  if (!Number.isFinite(kept)) throw new Error('a jar came out as no number');
  return best;
}

const inputs = Array.from({ length: jars }, (_, place) => jar(place));
const sheets_ms = fastest_ms((input) => jarSheet(input).volume_mL, inputs);
const bare_ms = fastest_ms(bare, inputs);
console.log(
  `${jars} jar sheets: ${sheets_ms.toFixed(0)} ms (${(sheets_ms / jars).toFixed(4)} ms each), bare ${bare_ms.toFixed(0)} ms, ratio ${(sheets_ms / bare_ms).toFixed(1)}`,
);
if (sheets_ms / jars > 0.2) process.exitCode = 1;
