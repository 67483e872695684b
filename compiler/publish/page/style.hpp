// How a page looks: type to be read at arm's length, black on white, one column, nothing said by
// colour alone.
#pragma once

namespace matchmark::publish {

// Contrast of every pair of text and ground is at least 7 to 1 (WCAG 2.2, 1.4.6); the smallest type
// is 16 px.
inline constexpr const char* page_style = R"css(
:root{color-scheme:light dark;--ink:#000;--paper:#fff;--soft:#f1f1ee;--line:#6b6b6b}
@media screen and (prefers-color-scheme:dark){
:root{--ink:#f2f2ef;--paper:#121212;--soft:#232323;--line:#9a9a9a}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);overflow-wrap:anywhere;
font:1.1875rem/1.5 "Liberation Sans","Noto Sans",Arial,system-ui,sans-serif}
.sheet{max-width:50rem;margin:0 auto;padding:1rem 1rem 4rem}
a{color:inherit;text-underline-offset:.15em}
:focus-visible{outline:3px solid var(--ink);outline-offset:3px}
.skip{position:absolute;left:-100rem}
.skip:focus{position:static;display:inline-block;padding:.5rem 0}
p,ul,ol,dl,figure,table,blockquote,pre{margin:0 0 .75rem}
ul,ol{padding-left:1.5rem}
h1,h2,h3,h4,h5,h6{line-height:1.2;margin:0 0 .5rem;text-wrap:balance}
h1{font-size:1.9rem}
h2{font-size:1.25rem;margin:3rem 0 1.25rem;padding:.4rem .75rem;background:var(--ink);
color:var(--paper);print-color-adjust:exact;-webkit-print-color-adjust:exact}
h3{font-size:1.3rem}
h4,h5,h6{font-size:1.1875rem}
.small,.label,th,figcaption,.variant,footer{font-size:1rem}
.block{border:2px solid var(--ink);margin:0 0 1.25rem}
.block h1{padding:.9rem .9rem .6rem;margin:0}
.block dl{display:flex;flex-wrap:wrap;margin:0;border-top:2px solid var(--ink);overflow:hidden}
.block dl div{flex:1 1 9.5rem;padding:.35rem .9rem .45rem;margin:0 0 -1px -1px;
border:solid var(--ink);border-width:0 0 1px 1px}
dt,.label{font-size:1rem;line-height:1.4}
.block dd{margin:0;font-weight:700}
.variant{display:inline-block;border:1px solid var(--ink);border-radius:.2rem;padding:0 .4rem;
font-weight:400;line-height:1.4}
nav ol,nav ul{list-style:none;padding:0;margin:0 0 1rem}
nav li{padding:.15rem 0}
nav a{display:inline-block;min-height:1.75rem}
table{border-collapse:collapse;width:100%}
caption{text-align:left;font-weight:700;padding-bottom:.3rem}
th,td{text-align:left;vertical-align:top;padding:.35rem .6rem .35rem 0;
border-bottom:1px solid var(--line)}
thead th{border-bottom:2px solid var(--ink)}
tbody th{font-size:inherit;font-weight:400}
.amount{text-align:right;padding:.35rem 0 .35rem .6rem;white-space:nowrap}
td.torque{white-space:normal}
th,td{overflow-wrap:break-word}
tfoot td,tfoot th{border-bottom:0;font-weight:700}
.step{border-top:2px solid var(--ink);padding:.9rem 0 1.1rem}
h2+.step{border-top:0;padding-top:0}
.step>header{display:flex;gap:.9rem;align-items:baseline;margin-bottom:.8rem}
.step>header h3{margin:0}
.ordinal{font-size:1.9rem;font-weight:700;line-height:1;min-width:2.2rem;
font-variant-numeric:tabular-nums}
.kind{border:2px solid var(--ink);padding:.05rem .45rem;margin-right:.35rem;font-size:1rem;
letter-spacing:.04em;vertical-align:.12em}
.do{list-style:none;padding:0}
.do>li{padding:.3rem 0}
.do .line{display:block;position:relative;padding-left:2.1rem}
.do div.line::before{content:"";position:absolute;left:.1rem;top:.32rem;
top:calc((1lh - 1.15rem)/2);width:1.15rem;height:1.15rem;border:2px solid var(--ink)}
.details{list-style:none;margin:.15rem 0 .1rem 2.1rem;padding:0 0 0 .8rem;
border-left:2px solid var(--line)}
.record{margin:.3rem 0 .2rem 2.1rem;display:flex;flex-wrap:wrap;gap:.2rem .6rem;align-items:end}
.blank{flex:1 0 8rem;max-width:16rem;border-bottom:2px solid var(--ink);height:1.5em}
.facts{display:flex;flex-wrap:wrap;gap:.1rem 1.4rem;font-size:1rem}
.tick{font:inherit;appearance:none;-webkit-appearance:none;
margin:0;width:1.6rem;height:1.6rem;flex:none;
border:2px solid var(--ink);background:var(--paper);display:inline-grid;place-content:center;
cursor:pointer}
.tick::before{content:"";width:.5rem;height:.95rem;border:solid var(--paper);
border-width:0 .22rem .22rem 0;transform:translateY(-.1rem) rotate(42deg);visibility:hidden}
.tick:checked{background:var(--ink)}
.tick:checked::before{visibility:visible}
@media (forced-colors:active){.tick{appearance:auto;-webkit-appearance:auto}}
.js .do label.line{padding-left:0;display:flex;gap:.7rem;align-items:flex-start;cursor:pointer}
.js .do label.line .tick{margin-top:calc((1lh - 1.6rem)/2)}
.js .details,.js .record{margin-left:2.3rem}
.finished{display:flex;gap:.5rem;align-items:center;margin-left:auto;cursor:pointer;
white-space:nowrap}
.written{font:inherit;color:inherit;background:var(--paper);border:2px solid var(--ink);
padding:.15rem .4rem;flex:1 1 8rem;max-width:16rem;min-width:0}
.bar{position:sticky;top:0;z-index:2;background:var(--paper);border-bottom:2px solid var(--ink);
padding:.4rem 1rem;display:flex;flex-wrap:wrap;gap:.1rem 1rem;align-items:center;
justify-content:center;font-size:1rem}
.bar progress{flex:0 1 16rem;height:.8rem;accent-color:var(--ink);appearance:none;
-webkit-appearance:none;border:2px solid var(--ink);background:var(--paper)}
.bar progress::-webkit-progress-bar{background:var(--paper)}
.bar progress::-webkit-progress-value{background:var(--ink)}
.bar progress::-moz-progress-bar{background:var(--ink)}
.js{scroll-padding-top:5rem}
.means{display:flex;flex-wrap:wrap;gap:.6rem 1.4rem;align-items:center;margin:3rem 0 -1.5rem;
font-size:1rem}
.means label{display:flex;gap:.6rem;align-items:center;flex:1 1 20rem;cursor:pointer}
button{font:inherit;font-size:1rem;color:inherit;background:var(--paper);
border:2px solid var(--ink);padding:.3rem .8rem;min-height:2rem;cursor:pointer}
.sign{width:3.4rem;height:3.4rem;flex:none;display:block}
.provided .line .sign{display:inline-block;width:2.6rem;height:2.6rem;vertical-align:middle;
margin-right:.4rem}
.value{font-weight:700;white-space:nowrap;font-variant-numeric:tabular-nums}
.number{display:inline-block;min-width:1.45em;height:1.45em;line-height:1.25em;text-align:center;
border:2px solid var(--ink);border-radius:1em;padding:0 .25em;font-size:1rem;font-weight:700;
font-variant-numeric:tabular-nums}
.note{border-left:.3rem solid var(--line);padding-left:.8rem}
.test{background:var(--soft);padding:.6rem .9rem;print-color-adjust:exact;
-webkit-print-color-adjust:exact}
.test dd{margin:0 0 .4rem}
.test dd:last-child{margin:0}
.test ul{list-style:none;padding:0;margin:0}
.signal{border:2px solid var(--ink);margin:0 0 .75rem}
.signal{display:grid;grid-template-columns:auto 1fr}
.signal .word{grid-column:1/-1}
.shown{padding:.55rem 0 .55rem .8rem}
.said{padding:.5rem .8rem .55rem;grid-column:2;min-width:0}
.said>:last-child{margin-bottom:0}
.signal .word{display:flex;align-items:center;gap:.5rem;margin:0;padding:.15rem .8rem;
font-size:1.1875rem;font-weight:700;letter-spacing:.08em;border-bottom:2px solid var(--ink)}
.word svg{width:1.55rem;height:1.4rem;flex:none}
.danger{border-width:5px}
.danger .word{background:var(--ink);color:var(--paper);print-color-adjust:exact;
-webkit-print-color-adjust:exact}
.warning{border-width:5px}
.caution{border-width:3px}
.notice{border-style:dashed}
.notice .word{font-style:italic;border-bottom-style:dashed}
.about{font-weight:700}
figure{display:flex;flex-wrap:wrap;gap:.75rem 1.25rem;margin:1.25rem 0 .75rem}
figcaption{flex:1 1 10rem}
.picture{position:relative;margin:0;border:1px solid var(--line);background:#fff;line-height:0}
.picture{flex:none;width:min(100%,34rem,34rem*var(--shape))}
@media (max-width:40rem){.picture{width:min(100% - 1.6rem,34rem*var(--shape));margin:0 .8rem}}
.picture img{display:block;width:100%;height:auto}
.point{position:absolute;width:0;height:0}
.point::before{content:"";position:absolute;left:-4px;top:-4px;width:8px;height:8px;
border-radius:50%;background:#000;box-shadow:0 0 0 1.5px #fff}
.point i{position:absolute;left:0;top:-1px;height:2px;background:#000;transform-origin:0 50%;
box-shadow:0 0 0 1px #fff}
.point b{position:absolute;width:26px;height:26px;margin:-13px 0 0 -13px;border:2px solid #000;
border-radius:50%;background:#fff;color:#000;text-align:center;font-size:15px;line-height:22px;
box-shadow:0 0 0 1.5px #fff}
.picture,.point *,.point::before{print-color-adjust:exact;-webkit-print-color-adjust:exact}
.drawing{overflow-x:auto;background:#fff;border:1px solid var(--line);padding:.5rem}
.drawing img{display:block;max-width:none;height:auto;margin:0 auto}
details{margin:.6rem 0 1.5rem}
summary{cursor:pointer;min-height:1.75rem}
.others{font-size:1rem;border-bottom:1px solid var(--line);margin-bottom:1rem}
.others ul{display:flex;flex-wrap:wrap;gap:0 1.4rem}
.key{list-style:none;padding:0;margin:0}
.key li{padding:.2rem 0}
.missing{flex:1 1 20rem;border:2px dashed var(--line);padding:1.2rem;margin:0}
blockquote{margin-left:1rem;padding-left:.8rem;border-left:2px solid var(--line)}
pre{white-space:pre-wrap}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);
white-space:nowrap}
footer{border-top:2px solid var(--ink);margin-top:3rem;padding-top:.75rem}
@page{margin:15mm 16mm 17mm;@bottom-right{content:counter(page) " / " counter(pages);
font:10pt "Liberation Sans",Arial,sans-serif}}
@media print{
body{font-size:12pt;line-height:1.4}
.sheet{max-width:none;padding:0}
.skip,nav,.bar,.means,.finished,details{display:none}
.tick,.tick::before{print-color-adjust:exact;-webkit-print-color-adjust:exact}
a{text-decoration:none}
h2{margin-top:1.6rem}
h1,h2,h3,caption,.word{break-after:avoid}
.step,.signal,figure,tr,.block,.keep,.drawn{break-inside:avoid}
.drawing{overflow:visible;border:0;padding:0}
.drawing img{max-width:100%;max-height:220mm;object-fit:contain}
.sign{print-color-adjust:exact;-webkit-print-color-adjust:exact}
.picture{width:min(100%,100mm,85mm*var(--shape))}
p,li{orphans:3;widows:3}}
)css";

} // namespace matchmark::publish
