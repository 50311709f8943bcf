import type { CancellationToken } from 'vscode-languageserver';
import type { BoxMethod, BoxParams } from '../../shared-core/drawing/messages/box-view.js';
import type { DrawingMethod, DrawingParams } from '../../shared-core/drawing/messages/drawing.js';
import type { MachineStepMethod, MachineStepParams } from '../../shared-core/drawing/messages/machine-view.js';
import type { PictureMethod, PictureParams } from '../../shared-core/drawing/messages/picture.js';
import type { MoveShelfMethod, MoveShelfParams } from '../../shared-core/drawing/messages/shelves.js';
import type { ShopViewMethod, ShopViewParams } from '../../shared-core/drawing/messages/shop-view.js';
import type { SetUpsMethod, SetUpsParams } from '../../shared-core/drawing/messages/set-ups.js';
import { ofPresent, whileAwaited } from '../answers.js';
import { boxes } from '../features/box-view.js';
import { drawing, moveShelf, picture } from '../features/drawing.js';
import { machineStep } from '../features/machine-view.js';
import { setUps } from '../features/set-ups.js';
import { shopMachines } from '../features/shop-view.js';
import type { Session } from './session.js';

const BOX: BoxMethod = 'borewright/box';
const DRAWING: DrawingMethod = 'borewright/drawing';
const PICTURE: PictureMethod = 'borewright/picture';
const MOVE_SHELF: MoveShelfMethod = 'borewright/moveShelf';
const SHOP_VIEW: ShopViewMethod = 'borewright/shopView';
const SET_UPS: SetUpsMethod = 'borewright/setUps';
const MACHINE_STEP: MachineStepMethod = 'borewright/machineStep';

/** What the client's panels show beside the text: bore maps, set-ups and the machines at work. */
export function answerPanels({ connection, answer, publisher, lastPlans, orders, face }: Session): void {
  connection.onRequest(DRAWING, (params: DrawingParams, token: CancellationToken) =>
    answer(
      'drawing',
      params.uri,
      token,
      null,
      (file) => {
        const drawn = drawing(file, params);
        publisher.drawn(params.uri);
        return drawn;
      },
      params.position,
    ),
  );
  connection.onRequest(PICTURE, (params: PictureParams, token: CancellationToken) =>
    answer('picture', params.uri, token, null, (file) => picture(file, params, face())),
  );
  connection.onRequest(MOVE_SHELF, (params: MoveShelfParams, token: CancellationToken) =>
    answer('moved shelf', params.uri, token, null, (file) => moveShelf(file, params)),
  );
  connection.onRequest(BOX, (params: BoxParams, token: CancellationToken) =>
    answer('box view', params.uri, token, null, (file) => boxes(file, params)),
  );
  connection.onRequest(SHOP_VIEW, (params: ShopViewParams, token: CancellationToken) =>
    answer('shop view', params.uri, token, null, (file) => shopMachines(file, params)),
  );
  connection.onRequest(SET_UPS, (params: SetUpsParams, token: CancellationToken) =>
    answer('set-ups', params.uri, token, null, async (file) => {
      if (file.kind === 'shop') return setUps(file, null);
      const { job, stale } = lastPlans.of(file);
      const plan = await ofPresent(file, whileAwaited(job.analysis.planBy(orders), token));
      return setUps(job, plan, stale);
    }),
  );
  connection.onRequest(MACHINE_STEP, (params: MachineStepParams, token: CancellationToken) =>
    answer('machine view', params.uri, token, null, async (file) => {
      if (file.kind === 'shop') return null;
      const plannable = lastPlans.of(file);
      const plan = await ofPresent(file, whileAwaited(plannable.job.analysis.planBy(orders), token));
      return machineStep(plannable, plan, params);
    }),
  );
}
