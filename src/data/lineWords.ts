/**
 * Words of order lines in other languages, and of goods that are no metal bars: one row each, language, word, meaning, mark. A word
 * stands here without accents and in small letters, as foldWord makes it; a star at its end takes every word that begins so, a dash at
 * its beginning every compound that ends so. "seen" in public stock lists, else from memory. wordMeanings.ts says what a meaning becomes.
 * The build packs the rows (config/packWords.cjs). Language "any": the same in several.
 */
export const lineWords = {
  rows: `
any,alu,aluminium,memory
any,aluminium,aluminium,seen
any,bronz,bronze,memory
any,diametro,dia,memory
any,rivet,goods,memory
any,metro,m,memory
any,millimeter,mm,memory
any,nailon,not metal,memory
any,nylon,not metal,seen
any,pom,not metal,memory
any,ring,other shape,memory
any,larg,skip,memory
any,profil,skip,memory
any,inox,stainless,memory
any,titan,titanium,memory
en,bar-stock,bar,memory
de,trager,I beam,memory
en,adapt*,goods,memory
de,welle,round,memory
en,bearing,goods,memory
en,bolt,goods,seen
en,bolts,goods,memory
en,bracket,goods,memory
en,cap,goods,seen
en,clamp,goods,memory
en,coil,goods,seen
en,coolant,goods,memory
en,coupl*,goods,seen
en,elbow*,goods,memory
en,electrode*,goods,memory
en,gasket,goods,memory
en,gear,goods,memory
en,gusset,goods,memory
en,hinge,goods,memory
en,nipple,goods,memory
en,nut,goods,memory
en,nuts,goods,memory
en,plug,goods,memory
en,profile cut,goods,memory
en,pulley,goods,memory
en,reducer,goods,memory
en,screw*,goods,memory
en,spring,goods,memory
en,washer*,goods,seen
en,abs,not metal,memory
en,acetal,not metal,memory
en,acrylic,not metal,memory
en,brick,not metal,memory
en,cable,not metal,memory
en,ceramic,not metal,memory
en,cork,not metal,memory
en,cpvc,not metal,memory
en,cushion,not metal,memory
en,delrin,not metal,memory
en,emulsion,not metal,seen
en,epdm,not metal,memory
en,fabric,not metal,memory
en,foam,not metal,memory
en,glass,not metal,memory
en,granite,not metal,memory
en,hose,not metal,memory
en,leather,not metal,memory
en,lexan,not metal,memory
en,mdf,not metal,memory
en,mica,not metal,memory
en,neoprene,not metal,memory
en,nylatron,not metal,seen
en,paint,not metal,memory
en,peek,not metal,memory
en,perspex,not metal,memory
en,plexi*,not metal,memory
en,plywood,not metal,memory
en,ptfe,not metal,memory
en,silon,not metal,memory
en,tape,not metal,memory
en,wood,not metal,memory
en,bush,other shape,memory
en,bushing,other shape,memory
en,corrugated,other shape,memory
en,deck,other shape,memory
en,disc,other shape,memory
en,discs,other shape,memory
en,disk,other shape,memory
en,durbar,other shape,memory
en,grating,other shape,memory
en,half-round,other shape,memory
en,mesh,other shape,memory
en,pile,other shape,memory
en,purlin,other shape,memory
en,rail,other shape,memory
en,rings,other shape,memory
en,sleeve,other shape,memory
en,zee,other shape,seen
de,ipb,H beam,seen
de,-trager,I beam,memory
de,doppel-t-tra*,I beam,memory
de,h-beam,I beam,memory
de,h-trager,I beam,memory
de,s.w,across,memory
de,schlu*,across,memory
de,alu,aluminium,memory
de,aluminium,aluminium,memory
de,gleichsch*,angle,memory
de,l-eisen,angle,memory
de,l-profil*,angle,memory
de,l-stahl,angle,memory
de,winkel*,angle,memory
de,-eisen,bar,memory
de,-stab,bar,memory
de,-stahl,bar,seen
de,-stange,bar,memory
de,blankstahl,bar,memory
de,stab,bar,memory
de,stabstahl,bar,memory
de,stangenmaterial,bar,memory
de,vollmaterial,bar,memory
de,stabe,bars,memory
de,stange,bars,memory
de,stangen,bars,memory
de,stg,bars,memory
de,formrohr,box,memory
de,hohlprofil*,box,memory
de,msh-profil,box,memory
de,profilrohr,box,memory
de,messing,brass,memory
de,u-eisen,channel,memory
de,u-profil*,channel,seen
de,u-stahl,channel,memory
de,zentimeter,cm,memory
de,kupfer*,copper,memory
de,rein-kupfer,copper,memory
de,gesagt,cut,memory
de,zugeschnitten,cut,memory
de,zuschnitt,cut,memory
de,dmr,dia,memory
de,durchm*,dia,seen
de,breitflach*,flat,memory
de,flach,flat,memory
de,flacheisen,flat,memory
de,flachmaterial,flat,memory
de,flachsta*,flat,seen
de,-bolzen,goods,seen
de,-schraube,goods,memory
de,bolzen,goods,memory
de,rohrbogen,goods,memory
de,schraube*,goods,memory
de,sechskant,hex,memory
de,sechskantsta*,hex,memory
de,skt,hex,memory
de,innen*,id,memory
de,zoll,in,memory
de,guss,iron,memory
de,keilstahl,keystock,memory
de,fixla*,length,memory
de,laenge,length,memory
de,lange,length,memory
de,lg,length,memory
de,lge,length,memory
de,lang,long,memory
de,lfd.m,m,memory
de,lfdm,m,memory
de,lfm,m,memory
de,nickel*,nickel,memory
de,dichtung*,not metal,seen
de,kunststoff*,not metal,memory
de,polyamid,not metal,memory
de,achtkant*,octagon,memory
de,aussen*,od,memory
de,flachhalbrund,other shape,memory
de,halbrund*,other shape,memory
de,bund,pack,memory
de,st,pcs,memory
de,staebe,pcs,memory
de,stck,pcs,memory
de,stk,pcs,memory
de,stuck,pcs,memory
de,stucke,pcs,memory
de,-blech,plate,memory
de,blech*,plate,memory
de,grobblech,plate,memory
de,anzahl,qty,memory
de,menge,qty,memory
de,herstell*,random,memory
de,betonstahl,rebar,memory
de,rechteck*,rect tube,memory
de,rro,rect tube,seen
de,rd-stahl,round,memory
de,rund,round,memory
de,rundeisen,round,memory
de,rundmaterial,round,memory
de,rundprofil,round,memory
de,rundsta*,round,seen
de,nahtlosrohr*,round tube,seen
de,rundrohr*,round tube,seen
de,nahtlos,seamless,memory
de,nahtlose*,seamless,memory
de,-profil,skip,memory
de,auf,skip,memory
de,blank,skip,memory
de,fur,skip,memory
de,gezogen,skip,memory
de,gls,skip,memory
de,roh,skip,memory
de,quadrat,square,memory
de,quadratsta*,square,memory
de,vierkant,square,memory
de,vierkantsta*,square,memory
de,vkt,square,memory
de,quadratrohr*,square tube,seen
de,vierkantrohr*,square tube,seen
de,edelstahl,stainless,memory
de,nichtrostend,stainless,memory
de,rostfrei*,stainless,memory
de,automatenstahl,steel,memory
de,baustahl,steel,memory
de,stahl,steel,memory
de,t-eisen,tee,memory
de,t-profil*,tee,memory
de,titan,titanium,memory
de,werkzeugstahl,tool steel,memory
de,-rohr,tube,seen
de,-rohre,tube,memory
de,rohr,tube,memory
de,rohre,tube,memory
de,rohrprofil,tube,memory
de,rohrstu*,tube,memory
de,stahlrohr,tube,memory
de,wand,wall,memory
de,wanddicke,wall,memory
de,wandst*,wall,memory
de,wandung,wall,memory
de,geschw*,welded,memory
de,-draht,wire,memory
de,walzdraht,wire,memory
de,z-profil,zee,seen
nl,h-balk,H beam,memory
nl,balk,I beam,memory
nl,balken,I beam,memory
nl,i-profiel,I beam,memory
nl,sleutelwijdte,across,memory
nl,hoekijzer,angle,memory
nl,hoeklijn,angle,memory
nl,hoekprofiel*,angle,seen
nl,hoekstaal,angle,memory
nl,l-profiel,angle,memory
nl,-staal,bar,memory
nl,staaf,bar,memory
nl,staf,bar,memory
nl,stafstaal,bar,memory
nl,stang,bar,memory
nl,staven,bar,memory
nl,handelslengtes,bars,memory
nl,lengtes,bars,memory
nl,-koker,box,memory
nl,buisprofiel,box,memory
nl,holprofiel,box,memory
nl,koker*,box,memory
nl,messing,brass,memory
nl,brons,bronze,memory
nl,kanaalprofiel,channel,memory
nl,u-profiel,channel,memory
nl,u-staal,channel,memory
nl,centimeter,cm,memory
nl,koper,copper,memory
nl,roodkoper,copper,memory
nl,gezaagd*,cut,memory
nl,zaag,cut,memory
nl,zagen,cut,memory
nl,doorsn*,dia,memory
nl,bandstaal,flat,memory
nl,plat,flat,memory
nl,platsta*,flat,memory
nl,strippen,flat,memory
nl,universaalstaal,flat,memory
nl,-bout,goods,memory
nl,bout,goods,memory
nl,bouten,goods,memory
nl,lasdraad,goods,memory
nl,zesk,hex,memory
nl,zeskant*,hex,memory
nl,binnen*,id,memory
nl,inwendig,id,memory
nl,duim,in,memory
nl,gietijzer,iron,memory
nl,spiestaal,keystock,memory
nl,lang,length,memory
nl,lengte,length,memory
nl,lg,length,memory
nl,kunststof,not metal,memory
nl,achtkant,octagon,memory
nl,buiten*,od,memory
nl,uitwendig,od,memory
nl,halfrond,other shape,memory
nl,hol,other shape,memory
nl,bos,pack,memory
nl,delen,pcs,memory
nl,st,pcs,memory
nl,stks,pcs,memory
nl,stuk,pcs,memory
nl,stuks,pcs,seen
nl,-plaat,plate,memory
nl,plaat,plate,memory
nl,platen,plate,memory
nl,aantal,qty,memory
nl,hoeveelheid,qty,memory
nl,handelslengte,random,memory
nl,beton*,rebar,memory
nl,as,round,memory
nl,assen,round,memory
nl,rond,round,memory
nl,ronde,round,memory
nl,rondijzer,round,memory
nl,rondsta*,round,memory
nl,precisiebuis,round tube,memory
nl,rondebuis,round tube,memory
nl,naadlo*,seamless,memory
nl,-profiel,skip,seen
nl,blank,skip,memory
nl,gegalvaniseerd,skip,seen
nl,maat,skip,memory
nl,op,skip,memory
nl,verzinkt,skip,memory
nl,zwart,skip,memory
nl,vierkant,square,seen
nl,vierkantstaal,square,memory
nl,vkt,square,memory
nl,vierkantbuis,square tube,memory
nl,roestv*,stainless,memory
nl,rvs,stainless,memory
nl,constructiestaal,steel,memory
nl,staal,steel,seen
nl,stalen,steel,seen
nl,t-ijzer,tee,memory
nl,t-profiel,tee,memory
nl,titanium,titanium,memory
nl,-buis,tube,memory
nl,buis,tube,memory
nl,buizen,tube,memory
nl,gasbuis,tube,memory
nl,pijp,tube,memory
nl,pijpen,tube,memory
nl,dik,wall,memory
nl,dikte,wall,memory
nl,wand,wall,memory
nl,wandd*,wall,memory
nl,gelast*,welded,memory
nl,walsdraad,wire,memory
sv,h-balk,H beam,memory
sv,-balk,I beam,memory
sv,balk,I beam,memory
sv,balkar,I beam,memory
sv,i-balk,I beam,memory
sv,nyckelvidd,across,memory
sv,l-profil,angle,memory
sv,l-stang,angle,memory
sv,likbent,angle,memory
sv,liksidig,angle,memory
sv,vinkel*,angle,memory
sv,-jarn,bar,memory
sv,-stang,bar,seen
sv,amne,bar,memory
sv,massiv,bar,memory
sv,solid,bar,memory
sv,stang,bar,memory
sv,stangstal,bar,memory
sv,amnen,bars,memory
sv,stanger,bars,memory
sv,kkr,box,seen
sv,konstruktionsror,box,memory
sv,profilror,box,memory
sv,vkr,box,seen
sv,massing,brass,memory
sv,brons,bronze,memory
sv,u-balk,channel,memory
sv,u-profil,channel,seen
sv,u-stang,channel,memory
sv,centimeter,cm,memory
sv,koppar,copper,memory
sv,kap,cut,memory
sv,kapad*,cut,memory
sv,kapat,cut,memory
sv,bandjarn,flat,memory
sv,bandstal,flat,memory
sv,platt*,flat,seen
sv,universalstang,flat,memory
sv,brick*,goods,memory
sv,bult,goods,memory
sv,bultar,goods,memory
sv,sexkant*,hex,memory
sv,innerdiameter,id,memory
sv,invandig,id,memory
sv,tum,in,memory
sv,gjutjarn,iron,memory
sv,kilstal,keystock,memory
sv,fixlangd,length,memory
sv,kaplangd,length,memory
sv,langd,length,memory
sv,lgd,length,memory
sv,lang,long,memory
sv,lopmeter,m,memory
sv,plast,not metal,memory
sv,attkant,octagon,memory
sv,utvandig,od,memory
sv,ytterdiameter,od,memory
sv,halvrund*,other shape,memory
sv,skiva,other shape,memory
sv,bunt,pack,memory
sv,bitar,pcs,memory
sv,langder,pcs,memory
sv,st,pcs,memory
sv,styck,pcs,memory
sv,stycken,pcs,memory
sv,-plat,plate,memory
sv,grovplat,plate,memory
sv,plat,plate,memory
sv,antal,qty,memory
sv,kvantitet,qty,memory
sv,fallande,random,memory
sv,armering*,rebar,memory
sv,rektangelror,rect tube,memory
sv,as,round,memory
sv,axel,round,memory
sv,axelstal,round,memory
sv,rund,round,seen
sv,rundjarn,round,memory
sv,rundsta*,round,seen
sv,precisionsror,round tube,memory
sv,rundror,round tube,memory
sv,somlos*,seamless,memory
sv,blank,skip,memory
sv,fyrkant,square,memory
sv,fyrkantsjarn,square,memory
sv,fyrkantsta*,square,memory
sv,kvadratstang,square,memory
sv,fyrkantror,square tube,memory
sv,kvadratror,square tube,memory
sv,rostfri*,stainless,memory
sv,syrafast,stainless,memory
sv,kolstal,steel,memory
sv,konstruktionsstal,steel,memory
sv,stal,steel,memory
sv,t-jarn,tee,memory
sv,t-profil,tee,memory
sv,-ror,tube,memory
sv,amnesror,tube,memory
sv,ror,tube,memory
sv,stalror,tube,memory
sv,gods,wall,memory
sv,godstjocklek,wall,memory
sv,tjock*,wall,memory
sv,vagg,wall,memory
sv,svetsa*,welded,memory
sv,valstrad,wire,memory
fr,poutre*,I beam,memory
fr,corniere*,angle,seen
fr,barre,bar,memory
fr,barreau,bar,memory
fr,fer,bar,memory
fr,fers,bar,memory
fr,barres,bars,memory
fr,creux,box,memory
fr,laiton,brass,memory
fr,uap,channel,seen
fr,centimetre*,cm,memory
fr,cuivre,copper,memory
fr,debit,cut,memory
fr,debite*,cut,memory
fr,scie*,cut,memory
fr,diametre,dia,memory
fr,bande*,flat,memory
fr,feuillard,flat,memory
fr,meplat*,flat,memory
fr,plat,flat,memory
fr,plats,flat,memory
fr,pied,ft,memory
fr,boulon*,goods,memory
fr,coude*,goods,memory
fr,ecrou,goods,memory
fr,hexagon*,hex,memory
fr,pans,hex,memory
fr,six-pans,hex,memory
fr,alesage,id,memory
fr,interieur,id,memory
fr,pouce*,in,memory
fr,fonte,iron,memory
fr,clavet*,keystock,memory
fr,lg,length,memory
fr,lgr,length,memory
fr,long,length,memory
fr,longueur*,length,memory
fr,metre*,m,memory
fr,millimetre*,mm,memory
fr,nickel,nickel,memory
fr,acrylique,not metal,memory
fr,brique*,not metal,seen
fr,plastique,not metal,memory
fr,octogon*,octagon,memory
fr,exterieur,od,memory
fr,caillebotis,other shape,memory
fr,demi-*,other shape,memory
fr,botte,pack,memory
fr,debits,pcs,memory
fr,elements,pcs,memory
fr,morceaux,pcs,memory
fr,pces,pcs,memory
fr,piece,pcs,memory
fr,pieces,pcs,memory
fr,feuille,plate,memory
fr,tole,plate,seen
fr,qte,qty,memory
fr,quantite,qty,memory
fr,armature,rebar,memory
fr,arbre,round,memory
fr,rond,round,seen
fr,ronde,round,seen
fr,ronds,round,memory
fr,sans soudure,seamless,memory
fr,ss soud,seamless,memory
fr,aile*,skip,memory
fr,egales,skip,seen
fr,etire*,skip,seen
fr,fixe,skip,memory
fr,inegales,skip,memory
fr,lamine*,skip,seen
fr,carre*,square,memory
fr,inoxydable,stainless,memory
fr,acier*,steel,memory
fr,titane,titanium,memory
fr,tube,tube,seen
fr,tubes,tube,memory
fr,tuyau*,tube,memory
fr,ep,wall,memory
fr,epais*,wall,memory
fr,epr,wall,memory
fr,paroi,wall,memory
fr,soudure,welded,memory
es,ipb,H beam,seen
es,ipr,H beam,seen
es,ips,I beam,seen
es,viga,I beam,memory
es,vigas,I beam,memory
es,alum,aluminium,memory
es,aluminio,aluminium,memory
es,angul*,angle,seen
es,fierro*,bar,seen
es,hierro*,bar,memory
es,maciz*,bar,memory
es,perfiles,bar,memory
es,varilla*,bar,seen
es,barra*,bars,memory
es,tramo*,bars,memory
es,hss,box,seen
es,ptr,box,memory
es,laton,brass,memory
es,bronce,bronze,memory
es,canal*,channel,memory
es,monten,channel,memory
es,centimetro*,cm,memory
es,cobre,copper,memory
es,aserrado,cut,memory
es,corta*,cut,memory
es,corte,cut,memory
es,serrado,cut,memory
es,fleje,flat,memory
es,llanta,flat,memory
es,planchuela*,flat,memory
es,pletina*,flat,memory
es,solera*,flat,memory
es,pie,ft,memory
es,arandela,goods,memory
es,codo*,goods,memory
es,electrodo*,goods,seen
es,exagonal,hex,memory
es,hex,hex,memory
es,hexagon*,hex,memory
es,interior,id,memory
es,pulg,in,memory
es,pulgada*,in,memory
es,fundicion,iron,memory
es,cuna,keystock,memory
es,largo,length,memory
es,lg,length,memory
es,long,length,memory
es,longitud,length,memory
es,por,length,memory
es,metro*,m,memory
es,mt,m,memory
es,milimetro*,mm,memory
es,mms,mm,memory
es,niquel,nickel,memory
es,acrilic*,not metal,memory
es,plastico,not metal,memory
es,exterior,od,memory
es,hueca,other shape,memory
es,hueco,other shape,memory
es,paquete,pack,memory
es,pieza,pcs,memory
es,piezas,pcs,memory
es,pz,pcs,memory
es,pza,pcs,memory
es,pzas,pcs,memory
es,uds,pcs,memory
es,ud,pcs,memory
es,chapa*,plate,memory
es,lamina*,plate,seen
es,cant,qty,memory
es,cantidad,qty,memory
es,corrugad*,rebar,memory
es,eje,round,memory
es,flecha,round,memory
es,lisa,round,memory
es,liso,round,seen
es,red,round,memory
es,redond*,round,seen
es,ced,schedule,memory
es,cedula,schedule,memory
es,sin costura,seamless,memory
es,sin soldadura,seamless,memory
es,carbono,skip,memory
es,estructural,skip,memory
es,galvanizad*,skip,seen
es,igual*,skip,seen
es,laminad*,skip,memory
es,perfil*,skip,memory
es,cuad,square,memory
es,cuadrad*,square,seen
es,inoxidable,stainless,memory
es,acero*,steel,memory
es,cano,tube,memory
es,canos,tube,memory
es,tuberia,tube,memory
es,tubo*,tube,seen
es,tubular,tube,memory
es,esp,wall,memory
es,espesor,wall,memory
es,grosor,wall,memory
es,pared,wall,memory
es,soldada,welded,memory
es,alambr*,wire,memory
pt,viga,I beam,memory
pt,alum,aluminium,memory
pt,aluminio,aluminium,memory
pt,cant,angle,memory
pt,cantoneira*,angle,seen
pt,blank,bar,memory
pt,bloco,bar,memory
pt,ferro,bar,memory
pt,macic*,bar,memory
pt,vergalh*,bar,seen
pt,barra*,bars,memory
pt,vara,bars,memory
pt,varas,bars,memory
pt,metalao,box,memory
pt,metalon,box,memory
pt,latao,brass,memory
pt,terca,channel,memory
pt,centimetro*,cm,memory
pt,cobre,copper,memory
pt,corta*,cut,memory
pt,corte,cut,memory
pt,serra*,cut,memory
pt,bitola,dia,memory
pt,barrinha,flat,memory
pt,chata,flat,seen
pt,chato,flat,memory
pt,fita,flat,memory
pt,tira,flat,memory
pt,pes,ft,memory
pt,arruela,goods,memory
pt,chumbador,goods,memory
pt,eletrodo*,goods,memory
pt,hexagonal,hex,memory
pt,sext,hex,memory
pt,sextavad*,hex,memory
pt,interno,id,memory
pt,pol,in,memory
pt,polegada*,in,memory
pt,fofo,iron,memory
pt,chaveta,keystock,memory
pt,com,length,memory
pt,comp,length,memory
pt,compr*,length,seen
pt,metro*,m,memory
pt,mt,m,memory
pt,milimetro*,mm,memory
pt,niquel,nickel,memory
pt,acrilic*,not metal,memory
pt,plastico,not metal,memory
pt,oitavad*,octagon,memory
pt,exter*,od,memory
pt,furado,other shape,memory
pt,meia-cana,other shape,memory
pt,feixe,pack,memory
pt,brs,pcs,memory
pt,pcs,pcs,memory
pt,peca,pcs,memory
pt,pecas,pcs,memory
pt,un,pcs,memory
pt,und,pcs,memory
pt,chapa*,plate,memory
pt,folha,plate,memory
pt,qtd,qty,memory
pt,qtde,qty,memory
pt,retang*,rect tube,seen
pt,eixo,round,memory
pt,lisa,round,memory
pt,liso,round,memory
pt,red,round,memory
pt,redond*,round,seen
pt,varao,round,memory
pt,sch,schedule,memory
pt,sem costura,seamless,memory
pt,alt,skip,memory
pt,carbono,skip,seen
pt,galvanizad*,skip,memory
pt,laminad*,skip,seen
pt,superficial,skip,seen
pt,tempera,skip,seen
pt,quad,square,memory
pt,quadrad*,square,seen
pt,metalom,square tube,memory
pt,inoxidavel,stainless,memory
pt,aco,steel,seen
pt,aco-carbono,steel,memory
pt,acos,steel,memory
pt,vnd,tool steel,memory
pt,cano,tube,memory
pt,tubo*,tube,seen
pt,tubular,tube,memory
pt,esp,wall,memory
pt,espessura,wall,memory
pt,par,wall,memory
pt,parede,wall,memory
pt,soldado,welded,memory
pt,fio-maquina,wire,memory
it,putrell*,I beam,memory
it,trave,I beam,memory
it,travi,I beam,memory
it,ch,across,memory
it,chiave,across,memory
it,allum*,aluminium,memory
it,anticorodal,aluminium,memory
it,angol*,angle,memory
it,cantonale,angle,memory
it,barra,bar,memory
it,ferro,bar,memory
it,massello,bar,memory
it,pieno,bar,memory
it,verga,bar,memory
it,barre,bars,memory
it,verghe,bars,memory
it,scatolat*,box,memory
it,ottone,brass,memory
it,bronzo,bronze,memory
it,canalino,channel,memory
it,centimetri,cm,memory
it,cu-etp,copper,memory
it,rame,copper,memory
it,segare,cut,memory
it,segato,cut,memory
it,tagli*,cut,memory
it,fi,dia,memory
it,bandella,flat,memory
it,nastr*,flat,memory
it,piatt*,flat,memory
it,reggetta,flat,memory
it,bullon*,goods,memory
it,curva,goods,memory
it,vite,goods,memory
it,esag,hex,memory
it,esagon*,hex,memory
it,interno,id,memory
it,pollic*,in,memory
it,ghisa,iron,memory
it,chiavetta,keystock,memory
it,lg,length,memory
it,lung,length,memory
it,lungh,length,memory
it,lunghezza,length,memory
it,lunghi,long,memory
it,metri,m,memory
it,mt,m,memory
it,millimetr*,mm,memory
it,nichel,nickel,memory
it,plastica,not metal,memory
it,ottagon*,octagon,memory
it,esterno,od,memory
it,cavo,other shape,memory
it,mandorlat*,other shape,memory
it,fasci*,pack,memory
it,pezzi,pcs,memory
it,pezzo,pcs,memory
it,pz,pcs,memory
it,spezzoni,pcs,memory
it,foglio,plate,memory
it,lamier*,plate,memory
it,n,qty,memory
it,q.ta,qty,memory
it,tondino,rebar,memory
it,rettangolare,rect tube,seen
it,albero,round,memory
it,tonda,round,memory
it,tondi,round,memory
it,tondo,round,memory
it,s.s,seamless,memory
it,s.sald,seamless,memory
it,senza saldatura,seamless,memory
it,alt,skip,memory
it,bonificat*,skip,memory
it,disuguali,skip,memory
it,lati,skip,memory
it,trafilat*,skip,memory
it,zincat*,skip,memory
it,quadra*,square,memory
it,quadri,square,memory
it,quadro,square,memory
it,quadrotto,square tube,memory
it,inossidabile,stainless,memory
it,acciai*,steel,memory
it,forat*,tube,memory
it,tubi,tube,memory
it,tubo,tube,memory
it,tubolar*,tube,seen
it,parete,wall,memory
it,sp,wall,memory
it,spess*,wall,memory
it,saldat*,welded,memory
it,vergella,wire,memory
pl,belka,I beam,memory
pl,dwuteownik*,I beam,memory
pl,alumini*,aluminium,memory
pl,kat,angle,memory
pl,katownik*,angle,seen
pl,nierownoramienny,angle,memory
pl,rownoramienny,angle,memory
pl,pret,bar,memory
pl,prety,bar,memory
pl,sztaba,bar,memory
pl,sztang*,bars,memory
pl,zamkniet*,box,memory
pl,mosiadz,brass,memory
pl,mosiezn*,brass,memory
pl,brazowy,bronze,memory
pl,ceownik*,channel,memory
pl,miedz*,copper,memory
pl,ciecie,cut,memory
pl,ciet*,cut,memory
pl,fi,dia,memory
pl,sredn*,dia,memory
pl,bednarka,flat,memory
pl,plaskown*,flat,seen
pl,tasma,flat,memory
pl,gwintowan*,goods,memory
pl,kolek,goods,memory
pl,nakretk*,goods,memory
pl,szesciokat*,hex,memory
pl,wewn,id,memory
pl,wewnetrzna,id,memory
pl,cal,in,memory
pl,cale,in,memory
pl,zeliw*,iron,memory
pl,wpust,keystock,memory
pl,dl,length,memory
pl,dlugosc,length,memory
pl,po,length,memory
pl,dlugosci,long,memory
pl,m.b,m,memory
pl,mb,m,memory
pl,metr,m,memory
pl,milimetr,mm,memory
pl,nikiel,nickel,memory
pl,tworzywo,not metal,memory
pl,zewn,od,memory
pl,zewnetrzna,od,memory
pl,krata,other shape,memory
pl,pierscien,other shape,memory
pl,kpl,pack,memory
pl,kawalek,pcs,memory
pl,kawalki,pcs,memory
pl,odcinek,pcs,memory
pl,szt,pcs,memory
pl,sztuk,pcs,memory
pl,sztuka,pcs,memory
pl,arkusz*,plate,memory
pl,blach*,plate,memory
pl,ilosc,qty,memory
pl,liczba,qty,memory
pl,odpad,random,memory
pl,zbrojeni*,rebar,memory
pl,zebr*,rebar,memory
pl,prostokatny,rect tube,memory
pl,okragl*,round,memory
pl,walek,round,memory
pl,walki,round,memory
pl,bez szwu,seamless,memory
pl,bezszwow*,seamless,memory
pl,na,skip,memory
pl,ocynk*,skip,memory
pl,kwadrat*,square,memory
pl,kwaso*,stainless,memory
pl,nierdzew*,stainless,memory
pl,stal,steel,memory
pl,stalow*,steel,memory
pl,teownik*,tee,memory
pl,tytan,titanium,memory
pl,rura,tube,memory
pl,rurka,tube,seen
pl,rurki,tube,memory
pl,rury,tube,memory
pl,gr,wall,memory
pl,grub,wall,memory
pl,grubosc,wall,memory
pl,scian*,wall,memory
pl,spawana,welded,memory
pl,walcowka,wire,memory
cs,nosnik,I beam,memory
cs,dural,aluminium,memory
cs,hlinik*,aluminium,memory
cs,l-profil,angle,memory
cs,nerovnoramenny,angle,memory
cs,rovnoramenny,angle,memory
cs,uhelnik*,angle,memory
cs,ocel,bar,memory
cs,polotovar,bar,memory
cs,prut,bar,memory
cs,tyc,bar,memory
cs,tyce,bars,memory
cs,jackel,box,memory
cs,jakl,box,seen
cs,jekl,box,memory
cs,jokl,box,memory
cs,mosaz*,brass,memory
cs,u-profil,channel,seen
cs,medena,copper,memory
cs,narezat,cut,memory
cs,rez,cut,memory
cs,rezan*,cut,memory
cs,pr,dia,memory
cs,prum,dia,memory
cs,prumer,dia,memory
cs,obdelnik*,flat,memory
cs,pasek,flat,memory
cs,paska,flat,memory
cs,pasovina,flat,memory
cs,ploch*,flat,memory
cs,kolik,goods,memory
cs,matice,goods,memory
cs,nyt,goods,memory
cs,sestihran,hex,memory
cs,vnitrni,id,memory
cs,palce,in,memory
cs,palec,in,memory
cs,litina,iron,memory
cs,klin,keystock,memory
cs,delka,length,memory
cs,delky,length,memory
cs,dl,length,memory
cs,po,length,memory
cs,dlouh*,long,memory
cs,metr,m,memory
cs,metru,m,memory
cs,metry,m,memory
cs,nikl,nickel,memory
cs,plast,not metal,memory
cs,silon,not metal,memory
cs,osmihran,octagon,memory
cs,vnejsi,od,memory
cs,pororost,other shape,memory
cs,pulkulat*,other shape,memory
cs,svazek,pack,memory
cs,dilu,pcs,memory
cs,ks,pcs,memory
cs,kus,pcs,memory
cs,kusu,pcs,memory
cs,tyci,pcs,memory
cs,plech*,plate,memory
cs,tabule,plate,memory
cs,mnozstvi,qty,memory
cs,pocet,qty,memory
cs,roxor,rebar,memory
cs,hridel,round,memory
cs,kruh,round,memory
cs,kruhov*,round,memory
cs,kulatina,round,memory
cs,bezesv*,seamless,memory
cs,bsv,seamless,memory
cs,loupan*,skip,memory
cs,na,skip,memory
cs,pozink*,skip,memory
cs,tazen*,skip,memory
cs,ctverco*,square,memory
cs,ctverec,square,memory
cs,ctyrhran,square,memory
cs,korozivzdorna,stainless,memory
cs,nerez*,stainless,memory
cs,ocelov*,steel,memory
cs,zelezo,steel,memory
cs,t-profil,tee,memory
cs,roura,tube,memory
cs,trubk*,tube,memory
cs,sila,wall,memory
cs,st,wall,memory
cs,stena,wall,memory
cs,tl,wall,memory
cs,svarovan*,welded,memory
cs,drat,wire,memory
hu,h-tarto,H beam,memory
hu,gerenda,I beam,memory
hu,i-acel,I beam,memory
hu,i-tarto,I beam,memory
hu,kulcsnyilas,across,memory
hu,laptav,across,memory
hu,l-acel,angle,memory
hu,l-szelveny,angle,memory
hu,sarokvas,angle,memory
hu,szogacel,angle,memory
hu,szogvas,angle,memory
hu,-acel,bar,memory
hu,-vas,bar,memory
hu,acel,bar,memory
hu,idomacel,bar,memory
hu,rud,bar,memory
hu,rudacel,bar,memory
hu,rudak,bar,memory
hu,szal,bars,memory
hu,idomcso,box,memory
hu,negyszogcso,box,memory
hu,zart,box,memory
hu,zartszelveny*,box,memory
hu,sargarez,brass,memory
hu,u-acel,channel,memory
hu,u-vas,channel,memory
hu,rezrud,copper,memory
hu,vorosrez,copper,memory
hu,meretre,cut,memory
hu,vagas,cut,memory
hu,vagott,cut,memory
hu,vagva,cut,memory
hu,atm,dia,memory
hu,atmero,dia,memory
hu,abroncs,flat,memory
hu,lapos*,flat,memory
hu,szalag*,flat,memory
hu,szelesacel,flat,memory
hu,alatet,goods,memory
hu,anya,goods,memory
hu,csap,goods,memory
hu,hatlap*,hex,memory
hu,hatszog*,hex,memory
hu,belso,id,memory
hu,huvelyk,in,memory
hu,ontottvas,iron,memory
hu,ekacel,keystock,memory
hu,hossz,length,memory
hu,hossza,length,memory
hu,hosszra,length,memory
hu,hosszu,length,memory
hu,hosszusag,length,memory
hu,hosszusagu,long,memory
hu,fmeter,m,memory
hu,folyometer,m,memory
hu,nikkel,nickel,memory
hu,danamid,not metal,memory
hu,muanyag,not metal,memory
hu,kulso,od,memory
hu,felkor,other shape,memory
hu,gyuru,other shape,memory
hu,koteg,pack,memory
hu,darab,pcs,memory
hu,db,pcs,memory
hu,szalas,pcs,memory
hu,szelet,pcs,memory
hu,vagat,pcs,memory
hu,acellemez,plate,memory
hu,lemez*,plate,memory
hu,darabszam,qty,memory
hu,menny*,qty,memory
hu,szalban,random,memory
hu,beton*,rebar,memory
hu,teglalap,rect tube,memory
hu,gombacel,round,memory
hu,gombvas,round,memory
hu,kor,round,memory
hu,koracel*,round,memory
hu,korrud,round,memory
hu,tengely,round,memory
hu,korcso,round tube,memory
hu,varrat nelkuli,seamless,memory
hu,varratmentes,seamless,memory
hu,varratnelkuli,seamless,memory
hu,-szelveny,skip,memory
hu,horganyzott,skip,memory
hu,os,skip,memory
hu,szelveny,skip,memory
hu,negyszog,square,memory
hu,negyszogacel,square,memory
hu,negyzet,square,memory
hu,negyzetacel,square,memory
hu,negyzetrud,square,memory
hu,negyzetcso,square tube,memory
hu,rozsdamentes,stainless,memory
hu,savallo,stainless,memory
hu,szenacel,steel,memory
hu,szerszamacel,steel,memory
hu,t-acel,tee,memory
hu,-cso,tube,memory
hu,acelcso,tube,memory
hu,cso,tube,memory
hu,csovek,tube,memory
hu,fal,wall,memory
hu,falv,wall,memory
hu,falvastagsag,wall,memory
hu,vtg,wall,memory
hu,hegesztett,welded,memory
hu,-huzal,wire,memory
hu,hengerhuzal,wire,memory
tr,npi,I beam,seen
tr,putrel,I beam,memory
tr,alimunyum,aluminium,memory
tr,aluminyum,aluminium,memory
tr,cesitkenar,angle,memory
tr,eskenar,angle,memory
tr,korniyer,angle,memory
tr,kosebent,angle,memory
tr,cubuk,bar,memory
tr,demir,bar,memory
tr,dolu,bar,memory
tr,kutuk,bar,memory
tr,malzeme,bar,memory
tr,kutu,box,memory
tr,pirinc,brass,memory
tr,sari,brass,memory
tr,npu,channel,seen
tr,santim,cm,memory
tr,bakir,copper,memory
tr,kesil*,cut,memory
tr,kesim*,cut,memory
tr,cap,dia,memory
tr,capi,dia,memory
tr,capinda,dia,memory
tr,bant,flat,memory
tr,lama,flat,seen
tr,lamalar,flat,memory
tr,serit,flat,memory
tr,silme,flat,memory
tr,civata,goods,memory
tr,dubel,goods,memory
tr,percin,goods,memory
tr,altigen,hex,memory
tr,altikose,hex,memory
tr,inc,in,memory
tr,parmak,in,memory
tr,pik,iron,memory
tr,kama,keystock,memory
tr,boyu,length,memory
tr,boyunda,length,memory
tr,uzunlugu,length,memory
tr,uzunluk*,length,memory
tr,boy,length or bars,memory
tr,uzunlugunda,long,memory
tr,metre*,m,memory
tr,mt,m,memory
tr,milim*,mm,memory
tr,mmlik,mm,memory
tr,nikel,nickel,memory
tr,kestamid,not metal,memory
tr,plastik,not metal,memory
tr,dis,od,memory
tr,gozyasi,other shape,memory
tr,izgara,other shape,memory
tr,paket,pack,memory
tr,adet,pcs,memory
tr,parca,pcs,memory
tr,takim,pcs,memory
tr,tane,pcs,memory
tr,levha,plate,memory
tr,sac,plate,memory
tr,adedi,qty,memory
tr,miktar,qty,memory
tr,nervurlu,rebar,memory
tr,dikdortgen,rect tube,memory
tr,mil,round,memory
tr,miller,round,memory
tr,saft,round,memory
tr,transmisyon,round,memory
tr,yuvarlak,round,memory
tr,dikissiz,seamless,memory
tr,galvaniz*,skip,memory
tr,siyah,skip,memory
tr,kare,square,memory
tr,paslanmaz,stainless,memory
tr,celik,steel,memory
tr,titanyum,titanium,memory
tr,boru,tube,memory
tr,borular,tube,memory
tr,kovan,tube,memory
tr,et,wall,memory
tr,etli,wall,memory
tr,kalin*,wall,memory
tr,mm'lik,wall,memory
tr,dikisli,welded,memory
tr,filmasin,wire,memory
ru,колонная,H beam,memory
ru,балка,I beam,seen
ru,балки,I beam,memory
ru,двутавр*,I beam,memory
ru,алюм,aluminium,memory
ru,алюмини*,aluminium,memory
ru,угловая,angle,memory
ru,угол,angle,memory
ru,уголки,angle,memory
ru,уголок,angle,seen
ru,угольник,angle,memory
ru,заготовка,bar,memory
ru,поковка,bar,memory
ru,прокат,bar,memory
ru,прут,bar,memory
ru,сортовои,bar,memory
ru,хлыст*,bars,memory
ru,гн,box,memory
ru,гнутосварнои,box,memory
ru,проф,box,memory
ru,профильн*,box,seen
ru,профтруба,box,memory
ru,латун*,brass,memory
ru,бронз*,bronze,memory
ru,шв,channel,memory
ru,швелер,channel,memory
ru,швеллер*,channel,seen
ru,см,cm,memory
ru,медныи,copper,memory
ru,медь,copper,memory
ru,порезк*,cut,memory
ru,рез,cut,memory
ru,резать,cut,memory
ru,резка,cut,memory
ru,диам,dia,memory
ru,диаметр,dia,memory
ru,ф,dia,memory
ru,лента,flat,memory
ru,полос*,flat,memory
ru,шина,flat,memory
ru,шинка,flat,memory
ru,штрипс,flat,memory
ru,болт,goods,seen
ru,кабел*,goods,seen
ru,подшипник*,goods,seen
ru,шест,hex,memory
ru,шестигр*,hex,memory
ru,внутреннии,id,memory
ru,двн,id,memory
ru,дюим,in,memory
ru,дюима,in,memory
ru,чугун,iron,memory
ru,шпонка,keystock,memory
ru,дл,length,memory
ru,длина,length,memory
ru,длинои,length,memory
ru,м/д,length,memory
ru,мерная,length,memory
ru,по,length,memory
ru,длины,long,memory
ru,м,m,seen
ru,метр*,m,memory
ru,миллиметр,mm,memory
ru,мм,mm,seen
ru,никель,nickel,memory
ru,вгп,nominal,memory
ru,ду,nominal,memory
ru,капролон,not metal,memory
ru,полиамид,not metal,memory
ru,фторопласт,not metal,memory
ru,нар,od,memory
ru,наружныи,od,memory
ru,полукруг,other shape,memory
ru,рельс,other shape,memory
ru,пачка,pack,memory
ru,прутков,pcs,memory
ru,хлыст,pcs,memory
ru,хлыста,pcs,memory
ru,хлыстов,pcs,memory
ru,шт,pcs,memory
ru,штук,pcs,memory
ru,лист,plate,seen
ru,листовая,plate,memory
ru,кол-во,qty,memory
ru,количество,qty,memory
ru,н/д,random,memory
ru,арматура,rebar,memory
ru,гост,reference,memory
ru,кр,round,memory
ru,круг,round,seen
ru,круга,round,memory
ru,круги,round,memory
ru,прутки,round,memory
ru,пруток,round,memory
ru,б/ш,seamless,memory
ru,бесшовн*,seamless,memory
ru,бшт,seamless,memory
ru,выс,skip,memory
ru,высота,skip,memory
ru,горячекат*,skip,memory
ru,калибр*,skip,memory
ru,оцинк*,skip,memory
ru,профиль,skip,memory
ru,квадрат*,square,memory
ru,н/ж,stainless,memory
ru,нерж,stainless,memory
ru,нержа*,stainless,memory
ru,ст,steel,memory
ru,сталь*,steel,seen
ru,углеродистая,steel,memory
ru,тавр,tee,memory
ru,тавровыи,tee,memory
ru,титан,titanium,memory
ru,тр,tube,memory
ru,труб,tube,memory
ru,труба,tube,seen
ru,трубка,tube,memory
ru,трубы,tube,memory
ru,стенка,wall,memory
ru,толщ,wall,memory
ru,толщина,wall,memory
ru,сварная,welded,memory
ru,катанка,wire,memory
zh,h型钢,H beam,memory
zh,i型钢,I beam,memory
zh,工字鋼,I beam,memory
zh,工字钢,I beam,memory
zh,对边,across,memory
zh,铝,aluminium,memory
zh,铝合金,aluminium,memory
zh,不等边,angle,memory
zh,不锈钢角钢,angle,memory
zh,等边,angle,memory
zh,角,angle,seen
zh,角钢,angle,memory
zh,原料,bar,memory
zh,圆料,bar,memory
zh,型材,bar,memory
zh,型钢,bar,memory
zh,材料,bar,seen
zh,口管,box,memory
zh,型材管,box,memory
zh,铅黄铜,brass,memory
zh,黄铜,brass,memory
zh,青铜,bronze,memory
zh,c型钢,channel,memory
zh,c钢,channel,memory
zh,槽,channel,memory
zh,厘米,cm,memory
zh,紫铜,copper,memory
zh,红铜,copper,memory
zh,切割,cut,memory
zh,切断,cut,memory
zh,锯切,cut,memory
zh,圆径,dia,memory
zh,径,dia,memory
zh,直径,dia,memory
zh,扁,flat,memory
zh,扁条,flat,memory
zh,扁鋼,flat,memory
zh,扁铝,flat,memory
zh,铜带,flat,memory
zh,呎,ft,memory
zh,变频器,goods,seen
zh,焊丝,goods,seen
zh,轴承,goods,seen
zh,六方,hex,memory
zh,六角,hex,memory
zh,六角棒,hex,memory
zh,内径,id,memory
zh,孔径,id,memory
zh,寸,in,memory
zh,英寸,in,memory
zh,铸铁,iron,memory
zh,键条,keystock,memory
zh,定长,length,memory
zh,总长,length,memory
zh,米长,length,memory
zh,长,length,memory
zh,长度,length,memory
zh,毫米长,long,memory
zh,公尺,m,memory
zh,延米,m,memory
zh,米,m,memory
zh,公厘,mm,memory
zh,毫米,mm,memory
zh,镍,nickel,memory
zh,亚克力,not metal,memory
zh,塑料,not metal,memory
zh,尼龙,not metal,memory
zh,八角钢,octagon,memory
zh,外径,od,memory
zh,半圆,other shape,memory
zh,网,other shape,memory
zh,捆,pack,memory
zh,个,pcs,memory
zh,件,pcs,memory
zh,只,pcs,memory
zh,支,pcs,memory
zh,条,pcs,memory
zh,根,pcs,memory
zh,冷板,plate,memory
zh,卷,plate,memory
zh,件数,qty,memory
zh,数量,qty,memory
zh,不定尺,random,memory
zh,钢筋,rebar,memory
zh,扁通,rect tube,memory
zh,矩形管,rect tube,memory
zh,不锈钢棒,round,memory
zh,元棒,round,memory
zh,元钢,round,memory
zh,圆,round,memory
zh,圆棒,round,memory
zh,棒材,round,seen
zh,元管,round tube,memory
zh,圆通,round tube,memory
zh,无缝钢管,round tube,memory
zh,无缝,seamless,memory
zh,冷拉,skip,memory
zh,冷拔,skip,memory
zh,宽,skip,memory
zh,宽度,skip,memory
zh,成品,skip,seen
zh,热轧,skip,seen
zh,口,square,memory
zh,实心方,square,memory
zh,方,square,memory
zh,方条,square,memory
zh,方棒,square,memory
zh,方钢,square,memory
zh,方铁,square,memory
zh,方铜,square,memory
zh,方铝棒,square,memory
zh,方矩管,square tube,memory
zh,方管,square tube,seen
zh,方通,square tube,memory
zh,不锈,stainless,memory
zh,碳素钢,steel,memory
zh,碳钢,steel,memory
zh,钢,steel,seen
zh,t型钢,tee,memory
zh,丁字钢,tee,memory
zh,钛,titanium,memory
zh,工具钢,tool steel,memory
zh,不锈钢管,tube,memory
zh,六分管,tube,memory
zh,四分管,tube,memory
zh,水管,tube,memory
zh,管,tube,seen
zh,管材,tube,memory
zh,鋼管,tube,memory
zh,铜管,tube,memory
zh,铝管,tube,memory
zh,厚,wall,seen
zh,厚度,wall,memory
zh,壁,wall,memory
zh,板厚,wall,seen
zh,焊,welded,seen
zh,盘条,wire,memory
ja,h形鋼,H beam,memory
ja,iビーム,I beam,memory
ja,i型鋼,I beam,memory
ja,i形鋼,I beam,memory
ja,二面幅,across,memory
ja,対辺,across,memory
ja,対辺寸法,across,memory
ja,アルミ,aluminium,memory
ja,アルミニウム,aluminium,memory
ja,lアングル,angle,memory
ja,l形鋼,angle,memory
ja,l鋼,angle,memory
ja,アングル,angle,memory
ja,アングル材,angle,memory
ja,ブロック,bar,memory
ja,切断材,bar,memory
ja,棒,bar,seen
ja,棒材,bar,seen
ja,素材,bar,seen
ja,真鍮,brass,seen
ja,黄銅,brass,memory
ja,青銅,bronze,memory
ja,cチャン,channel,memory
ja,c型鋼,channel,memory
ja,c形鋼,channel,memory
ja,センチ,cm,memory
ja,タフピッチ銅,copper,memory
ja,銅,copper,memory
ja,切断,cut,memory
ja,切断品,cut,memory
ja,鋸切断,cut,memory
ja,パイ,dia,memory
ja,径,dia,memory
ja,直径,dia,memory
ja,フラットバー,flat,memory
ja,フープ,flat,memory
ja,ミガキ平角,flat,memory
ja,帯,flat,memory
ja,平,flat,memory
ja,フィート,ft,memory
ja,ねじ,goods,memory
ja,ナット,goods,memory
ja,溶接棒,goods,memory
ja,六角,hex,memory
ja,六角材,hex,memory
ja,内径,id,memory
ja,インチ,in,memory
ja,吋,in,memory
ja,鋳鉄,iron,memory
ja,キー材,keystock,memory
ja,全長,length,memory
ja,切寸,length,memory
ja,切断長さ,length,memory
ja,定尺,length,memory
ja,寸法,length,memory
ja,長さ,length,memory
ja,mml,long,memory
ja,メートル,m,memory
ja,米,m,memory
ja,ミリ,mm,memory
ja,粍,mm,memory
ja,ニッケル,nickel,memory
ja,ジュラコン,not metal,memory
ja,ナイロン,not metal,memory
ja,八角,octagon,memory
ja,外径,od,memory
ja,かまぼこ,other shape,memory
ja,リング,other shape,seen
ja,束,pack,memory
ja,ヶ,pcs,memory
ja,個,pcs,memory
ja,本,pcs,memory
ja,枚,pcs,memory
ja,板,plate,memory
ja,板金,plate,memory
ja,数量,qty,memory
ja,本数,qty,memory
ja,乱尺,random,memory
ja,鉄筋,rebar,memory
ja,矩形パイプ,rect tube,memory
ja,長方形パイプ,rect tube,memory
ja,みがき丸棒,round,memory
ja,シャフト,round,seen
ja,ラウンドバー,round,memory
ja,ロッド,round,memory
ja,丸,round,seen
ja,丸棒材,round,seen
ja,シームレスパイプ,round tube,memory
ja,シームレス管,round tube,memory
ja,引抜管,round tube,memory
ja,シームレス,seamless,memory
ja,継目無,seamless,memory
ja,ミガキ,skip,memory
ja,材,skip,memory
ja,材料,skip,memory
ja,研磨,skip,seen
ja,磨,skip,memory
ja,込み,skip,seen
ja,スクエアバー,square,memory
ja,四角棒,square,memory
ja,角,square,memory
ja,角材,square,memory
ja,コラム,square tube,memory
ja,スクエアパイプ,square tube,memory
ja,正角パイプ,square tube,memory
ja,サス,stainless,memory
ja,ステン,stainless,memory
ja,ステンレス,stainless,memory
ja,炭素鋼,steel,memory
ja,鉄,steel,memory
ja,鋼,steel,seen
ja,t形鋼,tee,memory
ja,チタン,titanium,memory
ja,工具鋼,tool steel,memory
ja,ガス管,tube,memory
ja,ステンレスパイプ,tube,memory
ja,チューブ,tube,memory
ja,パイプ,tube,memory
ja,白ガス管,tube,memory
ja,白管,tube,memory
ja,管,tube,seen
ja,配管,tube,memory
ja,黒管,tube,memory
ja,厚,wall,seen
ja,厚さ,wall,memory
ja,厚み,wall,memory
ja,板厚,wall,seen
ja,溶接,welded,memory
ja,線材,wire,memory
ko,h형강,H beam,seen
ko,i빔,I beam,memory
ko,i형강,I beam,memory
ko,아이빔,I beam,memory
ko,대변,across,memory
ko,대변거리,across,memory
ko,맞변,across,memory
ko,알루미늄,aluminium,seen
ko,알미늄,aluminium,memory
ko,l형강,angle,memory
ko,ㄱ자강,angle,memory
ko,ㄱ자앵글,angle,memory
ko,ㄱ형강,angle,memory
ko,앵글,angle,memory
ko,소재,bar,memory
ko,자재,bar,memory
ko,형강,bar,seen
ko,신주,brass,memory
ko,황동,brass,memory
ko,청동,bronze,memory
ko,c형강,channel,memory
ko,ㄷ자강,channel,memory
ko,ㄷ형강,channel,memory
ko,센티,cm,memory
ko,구리,copper,memory
ko,동,copper,memory
ko,절단,cut,memory
ko,커팅,cut,memory
ko,컷팅,cut,memory
ko,지름,dia,memory
ko,직경,dia,memory
ko,파이,dia,memory
ko,대강,flat,memory
ko,스트립,flat,memory
ko,평각,flat,memory
ko,평강,flat,memory
ko,평철,flat,seen
ko,나사,goods,memory
ko,너트,goods,memory
ko,용접봉,goods,memory
ko,육각,hex,memory
ko,육각봉,hex,memory
ko,헥사봉,hex,memory
ko,내경,id,memory
ko,내부,id,memory
ko,인치,in,memory
ko,주철,iron,seen
ko,키재,keystock,memory
ko,기장,length,memory
ko,길이,length,memory
ko,전장,length,memory
ko,절단길이,length,memory
ko,정척,length,memory
ko,짜리,long,memory
ko,메타,m,memory
ko,미터,m,memory
ko,미리,mm,memory
ko,밀리,mm,memory
ko,밀리미터,mm,memory
ko,니켈,nickel,memory
ko,나일론,not metal,memory
ko,아세탈,not metal,memory
ko,테프론,not metal,memory
ko,팔각봉,octagon,memory
ko,외경,od,memory
ko,외부,od,memory
ko,반달봉,other shape,memory
ko,반원,other shape,memory
ko,세트,pack,memory
ko,가닥,pcs,memory
ko,개,pcs,memory
ko,매,pcs,memory
ko,본,pcs,memory
ko,자루,pcs,memory
ko,절,pcs,memory
ko,강대,plate,memory
ko,박판,plate,memory
ko,갯수,qty,memory
ko,수량,qty,memory
ko,난척,random,memory
ko,철근,rebar,memory
ko,사각파이프,rect tube,memory
ko,장각파이프,rect tube,memory
ko,둥근봉,round,memory
ko,라운드바,round,memory
ko,마봉강,round,memory
ko,마환봉,round,memory
ko,봉,round,seen
ko,환봉,round,seen
ko,구조관,round tube,memory
ko,둥근파이프,round tube,memory
ko,무계목강관,round tube,memory
ko,무계목,seamless,memory
ko,심레스,seamless,memory
ko,구상흑연,skip,seen
ko,너비,skip,memory
ko,높이,skip,memory
ko,변,skip,memory
ko,열연,skip,memory
ko,합금,skip,seen
ko,각,square,memory
ko,각강,square,memory
ko,각봉,square,memory
ko,각재,square,memory
ko,사각바,square,memory
ko,사각봉,square,memory
ko,정각봉,square,memory
ko,정사각봉,square,memory
ko,각관,square tube,memory
ko,각파이프,square tube,memory
ko,각형강관,square tube,memory
ko,스테인레스,stainless,memory
ko,스테인리스,stainless,memory
ko,스텐,stainless,memory
ko,강,steel,seen
ko,탄소강,steel,seen
ko,합금강,steel,memory
ko,t바,tee,memory
ko,t형강,tee,memory
ko,티타늄,titanium,memory
ko,공구강,tool steel,memory
ko,관,tube,memory
ko,배관,tube,memory
ko,배관용강관,tube,memory
ko,백관,tube,memory
ko,백파이프,tube,memory
ko,튜브,tube,memory
ko,파이프,tube,memory
ko,흑관,tube,memory
ko,관두께,wall,memory
ko,두께,wall,memory
ko,살두께,wall,memory
ko,판두께,wall,memory
ko,용접관,welded,memory
ko,선재,wire,memory
id,h-beam,H beam,memory
id,alumunium,aluminium,memory
id,siku,angle,memory
id,balok,bar,memory
id,batangan,bar,memory
id,besi,bar,memory
id,solid,bar,memory
id,batang,bars,memory
id,btg,bars,memory
id,hollow,box,memory
id,kuningan,brass,memory
id,perunggu,bronze,memory
id,kanal,channel,memory
id,senti,cm,memory
id,tembaga,copper,memory
id,digergaji,cut,memory
id,dipotong,cut,memory
id,gergaji,cut,memory
id,potong,cut,memory
id,diameter,dia,memory
id,flatbar,flat,memory
id,baut,goods,memory
id,dynabolt,goods,memory
id,kawat,goods,memory
id,as segi enam,hex,memory
id,enam,hex,memory
id,hexagonal,hex,memory
id,segi enam,hex,memory
id,dalam,id,memory
id,inchi,in,memory
id,inci,in,memory
id,panjang*,length,memory
id,pjg,length,memory
id,potongan,length,memory
id,mt,m,memory
id,mili,mm,memory
id,milimeter,mm,memory
id,nilon,not metal,memory
id,plastik,not metal,memory
id,luar,od,memory
id,bordes,other shape,memory
id,grating,other shape,memory
id,ikat,pack,memory
id,biji,pcs,memory
id,btn,pcs,memory
id,buah,pcs,memory
id,lembar,pcs,memory
id,ptg,pcs,memory
id,plat,plate,memory
id,plate,plate,memory
id,jml,qty,memory
id,jumlah,qty,memory
id,beton,rebar,memory
id,ulir,rebar,memory
id,as,round,memory
id,bulat,round,memory
id,tanpa las,seamless,memory
id,tanpa sambungan,seamless,memory
id,hitam,skip,seen
id,segi,skip,memory
id,kotak,square,memory
id,nako,square,memory
id,persegi,square,memory
id,holo,square tube,memory
id,stenlis,stainless,memory
id,baja,steel,memory
id,titanium,titanium,memory
id,pipa,tube,memory
id,dinding,wall,memory
id,tbl,wall,memory
id,tebal*,wall,memory
id,las,welded,memory
vi,nhom,aluminium,memory
vi,goc,angle,memory
vi,thep v,angle,memory
vi,dac,bar,memory
vi,phoi,bar,memory
vi,sat,bar,memory
vi,cay,bars,memory
vi,thanh,bars,memory
vi,hop,box,memory
vi,thau,brass,memory
vi,phan,cm,memory
vi,dong,copper,memory
vi,cat,cut,memory
vi,cua,cut,memory
vi,phi,dia,memory
vi,det,flat,memory
vi,la,flat,memory
vi,cut,goods,memory
vi,que han,goods,memory
vi,vit,goods,memory
vi,luc giac,hex,memory
vi,trong,id,memory
vi,gang,iron,memory
vi,then,keystock,memory
vi,dai,length,memory
vi,met,m,memory
vi,mts,m,memory
vi,li,mm,memory
vi,ly,mm,memory
vi,milimet,mm,memory
vi,mica,not metal,memory
vi,nhua,not metal,memory
vi,ngoai,od,memory
vi,luoi,other shape,memory
vi,ray,other shape,memory
vi,cuon,pack,memory
vi,cai,pcs,memory
vi,chiec,pcs,memory
vi,con,pcs,memory
vi,doan,pcs,memory
vi,khuc,pcs,memory
vi,mieng,pcs,memory
vi,tam,plate,memory
vi,ton,plate,memory
vi,s.luong,qty,memory
vi,gan,rebar,memory
vi,lap tron,round,memory
vi,tron,round,memory
vi,truc,round,memory
vi,tuyp,round tube,memory
vi,duc,seamless,memory
vi,khong han,seamless,memory
vi,ong duc,seamless,memory
vi,ma,skip,memory
vi,ma kem,skip,memory
vi,vuong,square,memory
vi,thep,steel,memory
vi,ong,tube,memory
vi,day,wall,memory
vi,han,welded,memory
`,
};
