/**
 * Words of headings in German, French, Spanish, Italian, Portuguese, Dutch, Swedish, Polish, Chinese and Japanese, by the plain
 * English that `HEADING_PATTERNS` reads. Entries are single words, fixed expressions or parts of compounds, never whole headings;
 * letters are compared without accents. A word that means different things in two of the languages is left out.
 */
export const HEADING_LEXICON: Readonly<Record<string, string>> = {
  // The sheet.
  sheet: `blech, bleches, bleche, tole, toles, tolerie, chapa, chapas, lamiera, lamiere, plaat, platen, plat, blacha, blachy, blach, 板, 板材, 板料, 薄板, arkusz, arkusza`,
  'sheet thickness': 'gr blachy',
  'sheet metal': 'feinblech, 钣金, 鈑金, 板金, plaatwerk',
  'base metal': '母材, 基材, 基板',
  base: 'grund, basis, base, trager, support, soporte, supporto, suporte, drager, barare',
  panel: 'platte, panneau, panneaux, pannello, pannelli, painel, paneel, panelu, 安装板, 取付板, 面板, パネル',
  material: `material, materials, werkstoff, werkstoffe, werkstoffs, matiere, materiau, materiaux, materiale, materiali, materiais, materiaal, materialet, materialu, tworzywo, 材料, 材质, 材質, 素材, 原料`,
  grade: 'gute, sorte, nuance, calidad, grado, qualita, qualidade, kwaliteit, kvalitet, gatunek, 牌号, 材种',
  type: 'typ, typs, type, tipo, sort, soort, rodzaj, 种类, 类型, 種類',
  'material type': 'materialart, werkstoffart',
  wall: 'wand, paroi, pared, parete, parede, gods, vagg, scianki, 壁',
  metal: 'metall, metaal, metallo, metalu',
  thickness: `dicke, starke, staerke, epaisseur, espesor, grosor, grueso, calibre, spessore, spess, espessura, dikte, tjocklek, grubosc, grubosci, ep, esp, 厚度, 厚さ, 厚み, 板厚, 厚`,

  // The hole and what is near it.
  hole: `loch, lochs, bohrung, bohrungs, bohrloch, trou, trous, percage, percages, agujero, agujeros, taladro, foro, fori, furo, furos, gat, gaten, hal, halet, otwor, otworu, otworow, 孔, 穴, 孔位, 开孔, 下穴, 下孔, 底孔, vorloch, kernloch`,
  dia: `durchmesser, diametre, diametro, diameter, srednica, srednicy, 直径, 径`,
  drill: 'bohrer, foret, broca, punta, boor, borr, wiertlo, 钻头, ドリル',
  mounting: `aufnahme, montage, einbau, montaje, montaggio, montagem, montering, monterings, montazowy, montazowe, 安装, 取付, 取付け`,
  edge: `rand, randes, kante, kanten, bord, bords, borde, bordes, bordo, borda, bordas, kant, kanter, krawedz, krawedzi, 边, 边缘, 板边, 端, 端面, 縁, 縁端`,
  distance: `abstand, abstands, distancia, distanza, afstand, avstand, odleglosc, odleglosci, 距离, 距離, 距`,
  spacing: 'entraxe, entraxes, interasse, rozstaw, teilung, 间距, ピッチ',
  centre: `mitte, mitten, centre, centres, centro, centros, centri, hart, centrum, srodek, srodka, 中心`,
  bend: `biegung, biege, biegekante, biegelinie, abkantung, abkant, pli, plis, pliage, doblez, doblado, plegado, piega, piegatura, dobra, dobras, zetting, zetlijn, bock, bocken, bocknings, giecie, giecia, zagiecia, 折弯, 折边, 弯曲, 曲げ`,
  radius: 'radius, rayon, radio, raggio, raio, straal, promien, 半径',

  // The fastener.
  fastener: `befestiger, bef element, befestigung, befestigungs, befestigungselement, verbindungselement, verbinder, fixation, fixations, fijacion, fijaciones, fissaggio, elemento de fijacion, fixacao, fixador, bevestiger, bevestigingsmiddel, faestelement, fastelement, lacznik, lacznika, elementu zlacznego, 紧固件, 緊固件, 締結部品, ファスナー`,
  nut: `mutter, muttern, mutterns, ecrou, ecrous, tuerca, tuercas, dado, dadi, porca, porcas, moer, moeren, nakretka, nakretki, 螺母, ナット`,
  stud: `bolzen, goujon, goujons, esparrago, esparragos, perno, pernos, prigioniero, prigionieri, prisioneiro, tapbout, pinnbult, pressbult, kolek, kolka, sworzen, sworznia, 螺柱, 螺钉柱, スタッド`,
  bolt: `bout, bouten, bult, boulon, bullone, parafuso, sruba, sruby, ボルト`,
  screw: 'schraube, schrauben, vis, tornillo, vite, viti, schroef, schroeven, skruv, wkret, wkreta, 螺钉',
  standoff:
    'abstandsbolzen, distanzbolzen, abstandshalter, entretoise, separador, distanziale, espacador, afstandsbus, distans, tulejka, 间隔柱, スペーサ, スペーサー',
  insert: 'einsatz, einsatze, inserto, inserti, insert, inzetstuk, insats, wkladka, wkladki, インサート',
  'press in': `einpress, press, pers, inpers, wciskana, wciskany, wciskanej, a sertir, de cravar, a pressare, autosertissable, autorremachable, autorremachables, autoclavante, a presion, zelfklinkend, 压铆, 压入, 圧入, カシメ, 自铆`,
  thread: `gewinde, filetage, taraudage, filet, rosca, roscas, filetto, filettatura, draad, schroefdraad, ganga, gang, gwint, gwintu, 螺纹, 螺牙, ねじ, ネジ`,
  size: `grosse, groesse, mass, taille, tamano, medida, medidas, misura, tamanho, maat, afmeting, storlek, rozmiar, rozmiaru, 规格, 規格, 尺寸, サイズ, 呼び, 寸法`,
  length: `lange, laenge, longueur, longitud, largo, lunghezza, comprimento, lengte, langd, dlugosc, 长度, 長さ, 长`,
  pitch: 'steigung, pas, paso, passo, spoed, stigning, skok',
  head: 'kopf, tete, cabeza, testa, cabeca, kop, huvud, leb, lba, 头部, 頭部',

  // Finish.
  finish: `finition, acabado, acabados, finitura, acabamento, afwerking, ytfinish, wykonczenie, wykonczenia, 仕上げ, 仕上`,
  surface: `oberflache, oberflachen, surface, superficie, superficial, superficiale, oppervlakte, oppervlak, yta, yt, powierzchni, powierzchnia, 表面`,
  treatment: `behandlung, traitement, tratamiento, trattamento, tratamento, behandeling, behandling, obrobka, 处理, 処理, 处置`,
  coating: `beschichtung, schicht, skikt, ytskikt, uberzug, revetement, recubrimiento, rivestimento, revestimento, coating, belaggning, powloka, powloki, 镀层, 涂层, めっき, メッキ`,

  // Counts.
  quantity: `anzahl, anz, menge, mengen, stuckzahl, quantite, qte, cantidad, cantidades, cant, ctd, quantita, qta, q ta, quantidade, quantidades, qtd, qtde, quant, aantal, aantallen, hoeveelheid, antal, kvantitet, ilosc, ilosci, liczba, 数量, 用量, 件数, nombre par, 员数, 員数, 个数, 個数, 数, 量`,
  pieces: `stuck, stueck, stk, stck, pieces, pcs, piezas, pzs, pza, pzas, pezzi, pz, pecas, pcas, stuks, stuk, st, sztuk, sztuki, szt, 个, 件, 只, 本, 枚`,
  units: 'uds, ud, unidades, unites, unita, un, eenheden, enheter, jednostek',
  total: `gesamt, summe, total, totale, totales, totaux, totaal, totalt, laczna, lacznie, calkowita, calkowity, razem, 总, 总计, 合计, 合計, 総, 計, 总共`,
  required: `benotigt, benoetigt, bedarf, bedarfs, erforderlich, soll, requis, requise, necessaire, besoin, requerida, requerido, necesaria, requeridas, richiesta, richieste, necessaria, necessario, fabbisogno, benodigd, benodigde, nodig, behov, erforderligt, wymagana, wymagane, potrzebna, 需求, 所需, 需要, 必要, 所要`,
  order: `bestell, bestellt, bestellte, commande, commandee, pedido, pedida, ordine, ordinata, encomenda, bestel, besteld, bestalld, bestallt, bestallnings, zamowienie, zamowienia, zamowiona, 订单, 采购, 発注, 注文`,
  used: 'verwendet, utilise, usado, utilizado, usato, usada, gebruikt, anvand, uzyte, 使用',
  per: `pro, je, par, por, per, cada, na, pour, 每, 毎`,
  pack: 'packung, verpackungs, paquet, paquete, confezione, pacote, verpakking, forpackning, opakowanie, opakowaniu, 包装, 箱',
  minimum: 'min, mindest, minimale, minimum, minimo, minimal, minsta, 最小',

  // Names and numbers.
  'no of hole': 'nombre de trous',
  'no of pieces': 'nombre de pieces, nombre de fixations, nombre d elements',
  no: `nummer, nr, numero, num, n, nro, nummern, numer, numeru, 号, 编号, 番号, 号码`,
  'part no': '料号, 品番, 型番, 型式, 型号, 品号',
  reference: 'reference, ref, referencia, referenz, riferimento, rif, referentie, referens',
  code: 'code, codes, kode, codice, cod, codigo, kod, kodu, 编码, 代码, コード',
  part: `teil, teile, teils, bauteil, bauteils, bauteile, piece, pieza, pezzo, peca, onderdeel, onderdelen, deel, detalj, czesc, czesci, detalu, 零件, 部件, 子件, 子項, 部品, 子部品, 零部件, 元件`,
  line: 'zeile, ligne, linea, riga, linha, regel, rad, wiersz, 行',
  sequence: '順番, lfd, laufende, volg, lop, lopande, ordem',
  internal: 'intern, interne, internes, interno, interna, wewnetrzny, 内部, 社内',
  bom: 'stuckliste, stucklisten, nomenclature, stuklijst, stycklista, 部品表',
  article: `artikel, ident, sach, artikels, article, articles, articulo, articulos, articolo, articoli, artigo, artigos, artykul, artykulu, produkt, produit, producto, prodotto, produto, product, produktu, 物料, 品目, 产品, 製品, 商品, 货品`,
  component: 'komponente, komponenten, komponent, composant, componente, componenti, componentes',
  standard: 'norm, standard, normalisee, normalizado, normalizzato, normy, 标准, 標準',
  catalog: 'katalog, catalogue, catalogo, catalogus, katalogowy, katalogu, 目录, カタログ',
  name: `nom, nombre, nome, naam, namn, nazwa, nazwy, name, 名称, 名, 名字, 品名`,
  description: `bezeichnung, bezeichnungen, benennung, beschreibung, kurztext, designation, libelle, descriptif, description, descripcion, denominacion, designacion, descrizione, denominazione, descricao, designacao, denominacao, omschrijving, beschrijving, benaming, benamning, beskrivning, opis, opisu, 描述, 说明, 説明`,
  position: 'position, poste, posizione, posicao, posicion, positie, pozycja, pozycji, 位置',
  drawing:
    'zeichnung, zeichnungs, plan, plano, disegno, desenho, tekening, ritning, ritnings, rysunek, rysunku, 图纸, 図面',

  // The tree, the trade and the rest.
  assembly: `baugruppe, baugruppen, ensemble, assemblage, conjunto, assieme, gruppo, samenstelling, sammanstallning, zespol, zespolu, zlozenie, 组件, 总成, 装配, 組立, 組品, アセンブリ`,
  'sub assembly':
    'unterbaugruppe, sous ensemble, subconjunto, sottoassieme, sottogruppo, subsamenstelling, podzespol, podzespolu, 子组件, サブ組立',
  parent: `ober, ubergeordnet, ubergeordnete, ubergeordnetes, parent, padre, pai, bovenliggend, bovenliggende, overordnad, nadrzedny, nadrzedna, 父件, 父项, 父, 上级, 上层, 親, 親部品`,
  level: `ebene, stufe, stufen, niveau, nivel, livello, niva, poziom, 层级, 层次, 階層, レベル`,
  supplier: `lieferant, lieferanten, fournisseur, fournisseurs, proveedor, proveedores, fornitore, fornitori, fornecedor, leverancier, leveranciers, leverantor, leverantors, leverantorens, dostawca, dostawcy, 供应商, 供方, 仕入先, 供給者`,
  manufacturer: `hersteller, herstellers, fabricant, fabricants, fabricante, produttore, costruttore, fabrikant, tillverkare, tillverkarens, tillverkar, producent, producenta, 制造商, 厂家, 厂商, メーカー, 製造元`,
  price: `preis, preise, einzelpreis, gesamtpreis, kosten, prix, cout, precio, importe, coste, prezzo, costo, importo, preco, custo, valor, prijs, pris, kostnad, cena, ceny, koszt, 单价, 价格, 总价, 金额, 単価, 価格, 金額`,
  unit: `einheit, unite, unidad, unidade, eenheid, enhet, jednostka, jednostki, jednostkowa, unitaire, unitario, unitaria, 单位, 単位, gerat, appareil, equipo, apparaat, apparat, urzadzenie, 单机, 单件, 单台, 台`,
  measure: 'mesure, miary',
  stock: `lager, lagerbestand, bestand, stock, existencias, inventario, giacenza, magazzino, scorta, estoque, voorraad, lagersaldo, saldo, stan, magazynowy, magazynie, 库存, 在庫`,
  load: `last, belastung, kraft, auspresskraft, charge, effort, carga, fuerza, carico, forza, forca, belasting, kracht, kraftbehov, obciazenie, sila, 载荷, 负载, 荷重, 力`,
  notes: `notiz, notizen, notering, noteringar, notitie, bemerkung, bemerkungen, anmerkung, anmerkungen, hinweis, hinweise, kommentar, kommentare, commentaire, commentaires, remarque, remarques, observation, observations, observacion, observaciones, nota, notas, comentarios, osservazioni, commenti, annotazioni, observacao, observacoes, comentario, opmerking, opmerkingen, anmarkning, anmarkningar, anteckning, uwagi, uwaga, komentarz, 备注, 注释, 注记, 備考, 注記, 摘要`,

  // Small words.
  of: `der, des, von, de, du, d, dell, della, delle, dei, del, di, do, da, dos, van, av`,
  to: `zu, zum, zur, bis, au, aux, al, alla, allo, tot, naar, till, a, as, ao, aan, l, 到, 至`,
  from: 'vom, dal, dalla, desde, fran, od, vanaf, 离',
  between: 'zwischen, entre, tra, fra, tussen, mellan, miedzy',
  in: 'im, dans, en, nel, nella, em, w, i, 在, 中',
  '/': 'und, et, y, e, ed, och, oraz, 和, 及, 与',
  '': '子, kurz, la, le, les, el, lo, los, il, den, die, das, het, の, から, まで, 的',
};
