import type { Role } from '../model/list.ts';

/**
 * Headings in the other languages seen on real lists: German, French, Spanish, Italian, Portuguese, Dutch, Swedish, Polish,
 * Chinese and Japanese. Whole headings; letters are compared without accents, spaces and punctuation.
 */
export const HEADINGS_ABROAD: Readonly<Partial<Record<Role, string>>> = {
  quantity: `Anzahl, Menge, Stückzahl, Stück, Stk, Anz, Anzahl (benötigt), quantité, qté, cantidad, cant, unidades, nb, Bedarf, besoin, fabbisogno, behov, quantità, q.tà, qta,
    pezzi, quantidade, qtd, qtde, aantal, hoeveelheid, kvantitet, antal, ilość, liczba, szt, 数量, 个数, 個数, 物料数量, 用量, 員数`,
  partNumber: `Teilenummer, Teile-Nr, Teilenr, Artikelnummer, Artikel-Nr, Art.-Nr, Art.Nr, Sachnummer, Bauteilnummer, Bestellnummer, Bestell-Nr,
    Materialnummer, référence, numéro de pièce, n° de pièce, code article, référence du fabricant, référence fabricant, código,
    número de parte, n.º de parte, número de pieza, nº de pieza, referencia, código de artículo, codice, codice articolo, numero parte, cod. articolo, número da peça, código da peça, referência,
    partnummer, artikelnr, onderdeelnummer, bestelnummer, detaljnummer, artikelnummer, numer części, nr części, kod, indeks,
    型番, 型式, 部品番号, 品番, 図番, 零件号, 料号, 物料编码, 物料编号, 代号, 型号, 编码`,
  description: `Beschreibung, Bezeichnung, Benennung, Bauteilname, Produkt, désignation, libellé, nom du produit, descripción, denominación,
    descrizione, denominazione, descrição, designação, nome, naam, omschrijving, beschrijving, namn, benämning, beskrivning, nazwa, opis,
    名称, 品名, 部品名, 商品名, 零件名称, 物料名称, 原件名称, 说明, 描述, 名前`,
  material: `Werkstoff, Blechmaterial, Blech, Grundwerkstoff, Materialgüte, matériau, matière, matière tôle, tôle, material de la chapa, chapa, materiale,
    materiale lamiera, lamiera, materiaal, plaatmateriaal, plåtmaterial, materiał, blacha, 材質, 材质, nuance, 板材, 板材材质, 母材, 材料`,
  fastenerMaterial:
    'Befestigerwerkstoff, Mutternwerkstoff, Werkstoff Mutter, matière fixation, matériau de la fixation, materiale inserto, 紧固件材料, 紧固件材质, ねじ材質',
  thickness: `Dicke, Stärke, Staerke, Blechdicke, Blechstärke, Materialstärke, Materialdicke, épaisseur, ép., épaisseur tôle, épaisseur de tôle, espesor,
    espesor de chapa, esp, sp, grosor, calibre, spessore, spess, spessore lamiera, espessura, espessura da chapa, dikte, plaatdikte, tjocklek, plåttjocklek, grubość, grubość blachy,
    厚度, 板厚, 厚さ, 板厚度, 厚み, 材料厚度`,
  hole: `Loch, Bohrung, Lochdurchmesser, Bohrungsdurchmesser, Loch-Ø, Aufnahmeloch, Montageloch, Bohrung Ø, perçage, diamètre de perçage, trou, diamètre du trou, Ø trou, Ø perçage, agujero,
    diámetro del agujero, taladro, foro, diametro foro, Ø foro, furo, diâmetro do furo, gat, gatdiameter, gatmaat, hål, håldiameter, otwór, średnica otworu, 孔径, 孔, 安装孔, 安装孔径, 穴径, 下穴径, 下穴, 取付穴径`,
  edge: `Randabstand, Kantenabstand, Lochabstand zum Rand, distance au bord, pince, distancia al borde, distanza dal bordo, distância à borda, distância da borda, randafstand, kantavstånd,
    odległość od krawędzi, 边距, 孔边距, 端面距離, 縁端距離, 端距離`,
  spacing:
    'Lochabstand, Mittenabstand, entraxe, distancia entre centros, interasse, entre-eixo, hartafstand, centrumavstånd, rozstaw, 孔距, 间距, 中心距, ピッチ, 穴ピッチ',
  bend: 'Biegung, Biegeabstand, Abstand zur Biegung, distance au pli, distancia al doblez, distanza dalla piega, distância à dobra, zetafstand, 折弯距离, 折弯, 曲げ距離',
  finish: `Oberfläche, Beschichtung, Oberflächenbehandlung, traitement, traitement de surface, finition, revêtement, acabado, recubrimiento, tratamiento, finitura, trattamento,
    rivestimento, acabamento, tratamento, revestimento, afwerking, oppervlaktebehandeling, ytbehandling, yta, wykończenie, powłoka, 表面处理, 表面処理, 镀层, 表面, 仕上げ, 処理`,
  thread:
    'Gewinde, Gewindegröße, Größe, filetage, filet, taille, rosca, tamaño, filetto, filettatura, misura, tamanho, schroefdraad, draad, draadmaat, maat, gänga, storlek, gwint, rozmiar, 规格, 螺纹, 螺纹规格, ねじ, ねじサイズ, 呼び, ネジ径',
  length: 'Länge, Laenge, longueur, long., longitud, largo, lunghezza, comprimento, lengte, längd, długość, 长度, 長さ',
  panel:
    'Blechteil, Platte, Einbauort, verwendet in, panneau, pièce de tôle, utilisé dans, pieza de chapa, usado en, pannello, usato in, painel, usado em, paneel, plaatdeel, gebruikt in, plåtdetalj, 安装板, 取付板, 面板, 取付先, 安装位置, 钣金件, 所属面板, 板金部品, パネル, 使用箇所',
  parent:
    'Baugruppe, übergeordnet, Oberteil, ensemble, sous-ensemble, conjunto, subconjunto, assieme, gruppo, samenstelling, sammanställning, zespół, 父项, 上级, 所属组件, 组件, 親品番, 親部品, 組立',
  level: 'Ebene, Stufe, niveau, nivel, livello, nível, nivå, poziom, 层级, 阶层, 階層, レベル',
  index:
    'Pos-Nr, Positionsnummer, Lfd. Nr., Lfd Nr, laufende Nummer, numéro, n°, repère, rep., número, nº, numero, nummer, volgnummer, lp, l.p., poz, 序号, 番号, 项目, 项目号, 行, 項番, 编号, 项次',
  note: 'Bemerkung, Bemerkungen, Anmerkung, Anmerkungen, Kommentar, Hinweis, commentaire, commentaires, remarque, remarques, observaciones, notas, nota, osservazioni, observações, opmerking, opmerkingen, anmärkning, anteckning, uwagi, 备注, 備考, 注记, 注释',
  supplier: `Hersteller, Händler, Lieferant, Laden, Verkäufer, fabricant, fournisseur, nom du fabricant, nom du fournisseur, proveedor, fabricante, produttore, fornitore, fornecedor,
    leverancier, fabrikant, leverantör, tillverkare, dostawca, producent, メーカー, 仕入先, 供应商, 品牌, 厂家, 制造商`,
  price: `Preis, Stückpreis, Einzelpreis, Gesamtpreis, Preis/Stück, Gesamt, Kosten, GP, prix, prix unitaire, prix total, precio, precio unitario, prezzo, costo, preço, preço unitário,
    prijs, pris, pris/st, cena, koszt, 单价, 总价, 价格, 単価, 小計, 金額, 合計`,
  unit: 'Einheit, ME, Mengeneinheit, Verpackungseinheit, VE, unité, unidad, unità, u.m., unidade, eenheid, enhet, jednostka, j.m., 单位, 単位',
  stock:
    'Lager, Lagerbestand, Bestand, en stock, existencias, giacenza, estoque, voorraad, lagersaldo, stan, 库存, 在庫',
  load: 'Last, Belastung, Kraft, charge, effort, carga, carico, belasting, obciążenie, 载荷, 荷重',
};
