# Raw HTML, links that would run, a drawing with scripts.
use "lamp.mmk"

guide open-lamp "Open <b>the</b> lamp' onload='alert(1)"
  for        competent
  tool       driver-10 "hexalobular driver 10 </title><script>alert(1)</script>"
  text: <script>alert(2)</script> [run](javascript:alert(3)) ![p](http://127.0.0.1:9/x.png) <iframe src="x">
  warning: <img src=x onerror="alert(4)"> [file](file:///etc/passwd) [data](data:text/html,x)

take-apart

step open "Open <svg onload=alert(5)>"
  undo       lid-screws with driver-10
  remove     lid
  photo "img/hostile.svg" "A drawing \"><script>alert(6)</script>"
    mark     lid-screws 0.2,0.2 0.8,0.8 0.2,0.8 0.8,0.2

put-back
  derived
