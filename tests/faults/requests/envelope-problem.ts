import { type Envelope, failureCodes } from '#shared/failure.ts';

/** Why something is no envelope of the contract, in a few words; null when it is one. */
export function envelopeProblem(envelope: Envelope<unknown>): string | null {
  if (envelope.ok) return Object.keys(envelope).sort().join() === 'ok,value' ? null : 'an answer with other members';
  const { code, message, path } = envelope.error;
  if (!failureCodes.includes(code)) return `the code “${code}” is none`;
  if (code === 'internal') return 'a mistake of our own';
  if (typeof message !== 'string' || message.trim() === '' || message.length > 4000) return 'no sentence';
  if (/\.[cm]?[jt]s:\d+|node_modules|SQLITE_/.test(message)) return `tells its insides: ${message.slice(0, 200)}`;
  if (path !== undefined && !(Array.isArray(path) && path.every((step) => ['string', 'number'].includes(typeof step))))
    return 'a path that is none';
  return code === 'invalid-input' && path === undefined ? 'no path' : null;
}
