import { MOST } from './kept.js';

/**
 * Setups that come to the Bench from elsewhere: cases of the shelf named in the address
 * (`/?case=one&kept=two&kept=three`), and case file texts that another page of this tab hands over.
 */

const HANDED = 'trimwright-handed-to-bench';

/**
 * For other pages: hands up to four setups to the Bench. The first goes onto the sliders, the others
 * are kept beside it, the first of those as the reference.
 *
 * @param {string[]} texts of case files
 * @returns {string} the address to go to then
 */
export function handToBench(texts) {
  sessionStorage.setItem(HANDED, JSON.stringify(texts.slice(0, MOST + 1)));
  return '/';
}

/** What another page has handed over, once. @returns {string[]} */
function takeHanded() {
  try {
    const texts = JSON.parse(sessionStorage.getItem(HANDED) ?? '[]');
    sessionStorage.removeItem(HANDED);
    return Array.isArray(texts) ? texts.map(String) : [];
  } catch {
    return []; // Storage can be shut off, and what is no list is none of ours.
  }
}

/**
 * Fetches what comes from elsewhere.
 *
 * @param {Object} server
 * @param {string[]} ids of cases of the shelf to keep
 * @returns {Promise<{live: Object|null, kept: Object[], trouble: string[]}>} cases as the state
 *     opens them, and a sentence for each that cannot be had
 */
export async function fromOutside(server, ids) {
  const trouble = [];

  async function get(name, question) {
    try {
      const answer = await question();
      if (answer.accepted !== false) {
        const { id = '', title, kind = 'file', fields } = answer;
        return [{ id, title, kind, fields }];
      }
      trouble.push(`${name} cannot be opened: ${answer.problems.map((p) => p.message).join(' ')}`);
    } catch (error) {
      trouble.push(`${name} cannot be opened: ${error.message}`);
    }
    return [];
  }

  const found = [];
  const texts = takeHanded();
  for (const [i, text] of texts.entries()) {
    const name = `Setup ${i + 1} of ${texts.length} that was handed over`;
    found.push(...(await get(name, () => server.json('/bench/open', { text }))));
  }
  const live = found.shift() ?? null;
  for (const id of ids) {
    const question = () => server.get(`/bench/case?id=${encodeURIComponent(id)}`);
    found.push(...(await get(`The case "${id}"`, question)));
  }
  if (found.length > MOST) {
    trouble.push(`Only ${MOST} can be kept beside the one on the sliders; the rest were left out.`);
  }
  return { live, kept: found.slice(0, MOST), trouble };
}
