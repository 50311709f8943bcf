import * as vscode from 'vscode';
import { isShopSubject, type ShopSubject } from '../../webview/messages/shop.js';
import { say, TITLES } from '../messages.js';
import { Panels } from '../panels.js';
import { ShopPanel, type AskForShop } from './shop-panel.js';

type ShopPanels = Panels<ShopSubject, ShopPanel>;

/** The panel of the machines of a shop. */
export function shopPanels(extension: vscode.Uri, ask: AskForShop): ShopPanels {
  return new Panels(extension, {
    type: 'borewright.shop',
    title: TITLES.machines,
    language: 'borewright-shop',
    takesFocus: false,
    isSubject: isShopSubject,
    make: (panel, subject, onClosed) => new ShopPanel(panel, extension, ask, subject, onClosed),
  });
}

/** Shows the machines of the shop file in the active editor beside it. */
export function showShop(panels: ShopPanels): void {
  const uri = panels.file();
  if (uri === null) {
    void vscode.window.showInformationMessage(say.openShop());
    return;
  }
  panels.show({ uri });
}
