import { byId, setText } from './dom.js';
import { wireDialog } from './files.js';

/**
 * The panel of the sheet. It is a plain form: the answer is a PDF in a tab of its own. The rider's
 * name goes onto the paper and nowhere else.
 *
 * @param {Object} parts
 * @param {Object} parts.state
 * @param {function(): Object} parts.measures
 * @param {function(): number} parts.speedKmh the speed looked at [km/h]
 * @param {function(): boolean} parts.isUsable whether the inputs make a case
 */
export function createSheet({ state, measures, speedKmh, isUsable }) {
  const said = byId('sheet-said');
  wireDialog('sheet', 'sheet-dialog', () => {
    setText(byId('sheet-at'), `at ${measures().withUnit(speedKmh(), 'km/h', 0)}`);
    const usable = isUsable();
    byId('sheet-make').disabled = !usable;
    setText(said, usable ? '' : 'Put the inputs right first; then the sheet can be made.');
  });
  byId('sheet-form').addEventListener('submit', () => {
    byId('sheet-fields').value = JSON.stringify(state.now.fields);
    byId('sheet-speed').value = String(speedKmh());
    byId('sheet-measures').value = measures().system;
    setText(said, 'The sheet opens in a tab of its own.');
  });
}
